export declare const rulebookPath: string;
export declare function writeRulebook(root: string): Promise<void>;
export declare function renderRulebook(root: string): Promise<Map<string, string>>;
