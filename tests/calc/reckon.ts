/** Reckons a worded formula: a small parser that knows only the usual order of signs. */
export function reckon(words: string): number {
  const signs = words.match(/\d+(\.\d+)?|, rounded up|the (larger|smaller) of|cos|√|\^-?[\d.]+|²|[-+−×÷(),]/g) ?? [];
  let at = 0;
  const take = (sign: string): boolean => {
    if (signs[at] !== sign) return false;
    at++;
    return true;
  };
  const loose = (): number => {
    let value = sum();
    while (take(', rounded up')) value = Math.ceil(value - 1e-9);
    return value;
  };
  const sum = (): number => {
    let value = product();
    for (;;) {
      if (take('+')) value += product();
      else if (take('−')) value -= product();
      else return value;
    }
  };
  const product = (): number => {
    let value = raised();
    for (;;) {
      if (take('×')) value *= raised();
      else if (take('÷')) value /= raised();
      else return value;
    }
  };
  const raised = (): number => {
    let value = single();
    for (;;) {
      if (take('²')) value **= 2;
      else if (signs[at]?.startsWith('^')) value **= Number(signs[at++]!.slice(1));
      else return value;
    }
  };
  const bracket = (): number => {
    if (!take('(')) throw new Error(`a bracket is missing in ${words}`);
    const value = loose();
    if (!take(')')) throw new Error(`a bracket stays open in ${words}`);
    return value;
  };
  const single = (): number => {
    if (take('√')) return Math.sqrt(bracket());
    if (take('cos')) return Math.cos((bracket() * Math.PI) / 180);
    for (const [name, pick] of [['larger', Math.max] as const, ['smaller', Math.min] as const]) {
      if (!take(`the ${name} of`)) continue;
      take('(');
      const one = sum();
      take(',');
      const other = sum();
      take(')');
      return pick(one, other);
    }
    return signs[at] === '(' ? bracket() : Number(signs[at++]);
  };
  const value = loose();
  if (at < signs.length) throw new Error(`${signs[at]} is left over in ${words}`);
  return value;
}
