/** A question without an answer, as it is kept. */
export interface Gap {
  readonly question: string;
  readonly reason: string;
  /** Day it was sent on. */
  readonly day: string;
}

export interface GapGroup {
  readonly reason: string;
  readonly questions: readonly { readonly question: string; readonly times: number; readonly day: string }[];
}

/** Gaps by reason, the commonest first; a question sent several times stands once, the newest day with it. */
export function groupGaps(gaps: readonly Gap[]): GapGroup[] {
  const groups = new Map<string, Map<string, { question: string; times: number; day: string }>>();
  for (const { question, reason, day } of gaps) {
    const group = groups.get(reason) ?? new Map();
    groups.set(reason, group);
    const before = group.get(question);
    group.delete(question);
    group.set(question, { question, times: (before?.times ?? 0) + 1, day });
  }
  const size = (group: GapGroup): number => group.questions.reduce((sum, { times }) => sum + times, 0);
  return [...groups]
    .map(([reason, questions]): GapGroup => ({ reason, questions: [...questions.values()].reverse() }))
    .sort((a, b) => size(b) - size(a) || (a.reason < b.reason ? -1 : 1));
}
