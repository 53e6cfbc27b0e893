export declare const bundles: readonly { readonly entry: string; readonly out: string; readonly runsIn: string }[];
export declare function ensureBuilt(root: string): Promise<boolean>;
