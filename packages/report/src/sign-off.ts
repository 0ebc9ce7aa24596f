/** Someone who answers for a part of the report. */
export interface SignOffPerson {
  readonly name: string;
  readonly company?: string;
  /** Number of the licence or certificate, as text. */
  readonly credential?: string;
}

/** The block to sign: who, where, by which code, with which gauge. Everything but the version is optional. */
export interface SignOff {
  /** Version of this shape. */
  readonly evendraftSignOff: 1;
  readonly address?: string;
  readonly permit?: string;
  readonly jurisdiction?: string;
  readonly codeEdition?: string;
  readonly basis?: 'as designed' | 'as tested';
  readonly designer?: SignOffPerson;
  readonly tester?: SignOffPerson;
  readonly gauge?: {
    readonly serial: string;
    /** Day of the last calibration, year-month-day. */
    readonly calibrated?: string;
  };
  readonly test?: {
    /** Year-month-day. */
    readonly date: string;
    readonly weather?: string;
  };
  /** Who signs, by role; designer and tester where it is left out. */
  readonly signatures?: readonly string[];
  readonly revisions?: readonly {
    readonly mark: string;
    /** Year-month-day. */
    readonly date: string;
    readonly change: string;
  }[];
}
