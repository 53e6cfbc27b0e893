export declare function withLock<T>(path: string, what: string, work: () => T | Promise<T>): Promise<T>;
