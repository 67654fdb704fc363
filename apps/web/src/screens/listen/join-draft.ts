import type { SoundJoined } from '@sedgeline/journal';
import type { JoinCandidate, JoinProposal, ProposedJoin } from '@sedgeline/projections';

/** A leg (or, with `leg` null, a rep) that something heard may belong to. */
export interface JoinPlace {
  readonly rep: string;
  readonly leg: number | null;
}

/** A proposal with what the handler has said of it so far. Nothing of it is kept. */
export interface JoinDraft {
  readonly proposal: JoinProposal;
  /** Places in `proposal.joins` of sure joins that he took out. */
  readonly takenOut: readonly number[];
  /** What he was asked, in order, and where he put it; `null`: nowhere. */
  readonly answers: readonly Answer[];
}

interface Answer {
  /** Place in `proposal.joins` of what was asked. */
  readonly join: number;
  readonly at: JoinCandidate;
  readonly place: JoinPlace | null;
}

/** One thing that is asked: a blast or click, and the leg it may belong to. */
export interface JoinQuestion {
  readonly join: number;
  readonly proposed: ProposedJoin;
  readonly at: JoinCandidate;
}

export const newJoinDraft = (proposal: JoinProposal): JoinDraft => ({ proposal, takenOut: [], answers: [] });

const samePlace = (a: JoinPlace, b: JoinPlace) => a.rep === b.rep && a.leg === b.leg;

/** Takes a sure join out, or puts it back. */
export function toggleSure(draft: JoinDraft, join: number): JoinDraft {
  const isOut = draft.takenOut.includes(join);
  const takenOut = isOut ? draft.takenOut.filter((one) => one !== join) : [...draft.takenOut, join];
  return { ...draft, takenOut };
}

/** Sure joins that stand. */
const standing = ({ proposal, takenOut }: JoinDraft): readonly ProposedJoin[] =>
  proposal.joins.filter(({ isSure }, n) => isSure && !takenOut.includes(n));

/** What is still to be asked, by time: of each unsure leg its likeliest blast that nobody has taken yet. */
export function questionsLeft(draft: JoinDraft): readonly JoinQuestion[] {
  const sure = standing(draft);
  const given = draft.answers.flatMap(({ place }) => (place === null ? [] : [place]));
  const heard = new Set([
    ...sure.map(({ candidates }) => candidates[0]!.startS),
    ...draft.answers.map(({ at }) => at.startS),
  ]);
  const asked = new Set<number>();
  return draft.proposal.joins
    .flatMap((proposed, join): JoinQuestion[] => {
      if (proposed.isSure || draft.answers.some((one) => one.join === join)) return [];
      if ([...sure, ...given].some((one) => samePlace(one, proposed))) return [];
      const at = proposed.candidates[0];
      return at === undefined || heard.has(at.startS) ? [] : [{ join, proposed, at }];
    })
    .sort((a, b) => b.at.sureness - a.at.sureness)
    .filter(({ at }) => {
      const isFirst = !asked.has(at.startS);
      asked.add(at.startS);
      return isFirst;
    })
    .sort((a, b) => a.at.startS - b.at.startS);
}

/** Puts what was asked at a place (`null`: nowhere). */
export function answered(draft: JoinDraft, { join, at }: JoinQuestion, place: JoinPlace | null): JoinDraft {
  return { ...draft, answers: [...draft.answers, { join, at, place }] };
}

/** The last answer back. */
export const unanswered = (draft: JoinDraft): JoinDraft => ({
  ...draft,
  answers: draft.answers.slice(0, -1),
});

/** Places that nothing is joined to yet: what "another rep" may be. */
export function placesLeft(draft: JoinDraft, wants: readonly JoinPlace[]): readonly JoinPlace[] {
  const taken = [
    ...standing(draft),
    ...draft.answers.flatMap(({ place }) => (place === null ? [] : [place])),
  ];
  return wants.filter((want) => !taken.some((one) => samePlace(one, want)));
}

/** The joins as they would be kept, by time. */
export function joinsOf(draft: JoinDraft): SoundJoined['joins'] {
  const join = ({ rep, leg }: JoinPlace, atS: number, by: 'program' | 'handler') => ({
    rep,
    ...(leg === null ? {} : { leg }),
    atS,
    by,
  });
  return [
    ...standing(draft).map((one) => join(one, one.candidates[0]!.startS, 'program')),
    ...draft.answers.flatMap(({ place, at }) => (place === null ? [] : [join(place, at.startS, 'handler')])),
  ].sort((a, b) => a.atS - b.atS);
}
