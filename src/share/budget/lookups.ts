/** Expressions that look a name up in the tables which the copy carries; an unknown name gives an error. */
export interface BudgetLookups {
  readonly sheet: string; // on which they stand
  readonly nameGone: string; // the first of its names that is there no more; blank where all are
  readonly errorAt: string; // its first row in which an error stands; 0 where none does
  /** Roughness [m] of a material's name or a number in a cell that is not blank; of a name that we chose. */
  readonly roughness: (cell: string) => string;
  readonly usualRoughness: (name: string) => string;
  /** Coefficient of a list of fittings in a cell that is not blank, in a duct whose diameter another cell gives. */
  readonly fittings: (cell: string, diameterCell: string) => string;
  /** Of that list the first entry that is no name of any, without its count; an empty text where there is none. */
  readonly wrongEntry: (cell: string, diameterCell: string) => string;
  /** Of that list the part that is of mitres. */
  readonly mitres: (cell: string, diameterCell: string) => string;
  /** Of that list the first branch: its angle [degrees], below 0 where it is plain, 0 for none; and its K once. */
  readonly branch: (cell: string, diameterCell: string) => { readonly angle: string; readonly k: string };
  /** Coefficient of one exit. */
  readonly exit: string;
  /** Coefficient of a hood entry in a cell that is not blank; of a name that we chose. */
  readonly hood: (cell: string) => string;
  readonly usualHood: (name: string) => string;
  /** Open area [m2] of a gate in a named condition; its diameter in [m]. */
  readonly gateOpening: (cell: string, diameter: string) => string;
  /** The key in the table of transport velocities, the velocity under which it settles and above which nothing is gained [m/s], 0 for none; whether it burns or sparks, in a word. */
  readonly dust: (cell: string) => {
    readonly key: string;
    readonly low: string;
    readonly high: string;
    readonly hazard: string;
  };
}
