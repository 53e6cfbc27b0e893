/** What a text with readings in it has somewhere; all else is passed by without being looked at. */
const hint =
  /reading|depth|sta\b|stations?\b|\d\+\d\d|measure|shots|soundings|survey|gauged|every|apart|lectura|profundidad|estaci|medida|sondeo|cada|\n\s{0,9}[-.\d]|\d\s?(?:ft|feet|m)\b[\s:=]{0,3}[\d.]/i;
const numbers = /[\d½¼¾⅛⅜⅝⅞]/g;

/** False for a text that can have no depth readings in it. */
export const mayHaveReadings = (text: string): boolean => hint.test(text) && (text.match(numbers)?.length ?? 0) >= 3;
