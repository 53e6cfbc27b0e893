export declare const indexPath: string;
export declare function generate(root: string): number;
export declare function renderIndex(root: string): string;
export declare function recordIds(root: string, folder: string): string[];
