export declare function readFrontMatter(
  text: string,
  fault: (what: string) => Error,
): { readonly fields: Readonly<Record<string, string | readonly string[]>>; readonly body: string };
