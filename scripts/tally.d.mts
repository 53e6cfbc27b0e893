export interface Count {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

/** What is read of a test file that has run. */
export interface Ran {
  readonly children: { allTests(): Iterable<{ result(): { readonly state: string } }> };
  ok(): boolean;
}

export declare function countOf(modules: readonly Ran[], unhandledErrors?: readonly unknown[]): Count;
export declare function closingLine(count: Count): string;
