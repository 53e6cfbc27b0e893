/** Kind and place of a fault in one line. Its message is left out: it may hold what somebody typed. */
export function describe(fault: unknown): string {
  if (!(fault instanceof Error)) return 'something that is no error was thrown';
  const place = fault.stack?.split('\n').find((line) => line.trimStart().startsWith('at '));
  return `${fault.name}${place ? ` ${place.trim()}` : ''}`;
}
