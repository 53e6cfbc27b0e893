export interface Field {
  readonly name: string;
  readonly type: string;
  readonly optional: boolean;
  readonly doc: string;
}

export declare function fieldsOf(source: string, shape: string): Field[];
