/** What a program can know of a session: what was tapped, and what a sound of that day holds. Nothing here tells the truth. */
export interface SessionSeen {
  readonly reps: readonly RepSeen[];
  readonly whistles: readonly BlastSeen[];
  /** When the sound begins by the clock of the taps, and how far that may be off either way; `null` where nobody knows. */
  readonly starts: { readonly atS: number; readonly withinS: number } | null;
  readonly lengthS: number;
}

/** A blast as an ear gives it, seconds from the beginning of the sound. */
export interface BlastSeen {
  readonly startS: number;
  readonly endS: number;
  readonly kind: 'long' | 'pip';
  readonly pitchHz: number;
}

export interface RepSeen {
  readonly rep: string;
  readonly legs: readonly {
    readonly skill: 'line' | 'stop' | 'cast-back' | 'pickup' | 'recall' | 'delivery';
    readonly grade: 'good' | 'fair' | 'missed';
    /** When its grade was tapped, seconds by the clock of the taps. */
    readonly tappedAtS: number;
  }[];
}

/** What a joiner says of one leg: the blast it takes for that leg's own, and whether it is sure enough to say so unasked. */
export interface Join {
  readonly rep: string;
  readonly leg: number;
  readonly startS: number;
  readonly isSure: boolean;
}

/** A way of joining that is judged. Legs of which nothing can be said are left out. */
export interface Joiner {
  readonly name: string;
  readonly join: (seen: SessionSeen) => readonly Join[];
}
