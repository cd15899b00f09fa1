/** Shapes of the invented garden's tables. Covers are percent, one for each May from 2021 to 2026; 0.5 stands for "<1"; null for not looked. */
export type Six = readonly [number, number, number, number, number, number];
export type SixSeen = readonly (number | null)[];

export interface DemoSeries {
  readonly kind: string;
  readonly origin?: 'dirt' | 'stain' | 'metal';
  readonly cover: SixSeen;
  readonly severity?: 'slight' | 'moderate' | 'severe';
  readonly activity?: 'active' | 'unclear' | 'stable';
  /** For kinds told by count. */
  readonly count?: 'one' | 'two to five' | 'more';
}

export interface DemoZone {
  readonly letter: string;
  readonly name: string;
  readonly m2: number;
  readonly exposure: readonly string[];
  readonly reach: string;
  readonly substrate?: string;
  readonly significance?: number;
  readonly series: readonly DemoSeries[];
  /** Why it was not looked at, where a cover is null. */
  readonly notLooked?: string;
  readonly beading?: readonly ('beads' | 'flattened' | 'sheets' | 'wets' | null)[];
}

export interface DemoTreatment {
  readonly type: string;
  readonly date: string;
  /** Letters; all zones when left out. */
  readonly zones?: string;
  readonly product?: string;
  readonly batch?: string;
  /** Tin of the store, by the name it was planted under. */
  readonly stock?: string;
  readonly gramsPerCoat?: number;
  readonly coats?: number;
  readonly by?: string;
  readonly people?: readonly { readonly role: string; readonly hoursPerM2: number }[];
  /** Last day of several. */
  readonly ended?: string;
  readonly note?: string;
}

export interface DemoLook {
  readonly zone: string;
  readonly date: string;
  readonly result: 'clear' | 'green' | 'unsure';
}

export interface DemoWork {
  readonly number: string;
  readonly title: string;
  readonly maker: string;
  readonly date: string;
  readonly materials: string;
  readonly dimensions: string;
  readonly note: string;
  readonly place: string;
  readonly access: string;
  readonly side: string;
  readonly zones: readonly DemoZone[];
  readonly treatments: readonly DemoTreatment[];
  readonly looks: readonly DemoLook[];
  readonly inserts?: readonly {
    readonly zone: string;
    readonly material: string;
    readonly materialBy: 'by its looks';
    readonly makerKnown: boolean;
    readonly where: string;
    readonly removable: 'yes' | 'no';
    readonly note: string;
  }[];
  /** Years the Stand-in surveyed. */
  readonly standIn?: readonly number[];
}
