export declare function signatureOf(root: string): string;
