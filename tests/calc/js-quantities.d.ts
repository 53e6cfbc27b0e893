/** The little of js-quantities that the tests use as an oracle. */
declare module 'js-quantities' {
  interface Amount {
    readonly scalar: number;
    to(unit: string): Amount;
  }
  export default function Qty(number: number, unit: string): Amount;
}
