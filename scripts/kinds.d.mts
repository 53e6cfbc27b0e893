export interface Kind {
  readonly kind: string;
  readonly folder: string;
  readonly shape: string;
  readonly fields?: string;
  readonly module: string;
  readonly later?: boolean;
}
export declare const kinds: readonly Kind[];
export declare const idPattern: RegExp;
