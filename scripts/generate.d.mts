export declare const indexPath: string;
export declare function generate(root: string): Promise<number>;
export declare function writeIndex(root: string): void;
export declare function renderIndex(root: string): string;
export declare function recordIds(root: string, folder: string): string[];
