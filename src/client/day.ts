/** The day so many days back, by the clock of this phone, as the book writes days. */
export function dayHere(back: number): string {
  const date = new Date();
  date.setDate(date.getDate() - back);
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}
