interface Request {
  readonly question: string;
  readonly units?: string;
  readonly agency?: string;
}
interface Gap {
  readonly question: string;
  readonly said: string;
}
export function requestOf(line: string): Request | undefined;
export function requestsIn(log: string): { requests: Request[]; unread: number[] };
export function gapsIn(
  requests: readonly Request[],
  replies: readonly {
    readonly kind: string;
    readonly reason?: string | undefined;
    readonly clarify?: { readonly text: string } | undefined;
    readonly text: string;
  }[],
): [reason: string, gaps: Gap[]][];
export function gaps(root: string, args: readonly string[]): number;
