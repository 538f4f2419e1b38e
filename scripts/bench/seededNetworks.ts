const SEEDS = 50;

/** What is drawn for the comparison of answers: for each seed three sizes, with K alone and with friction. */
export const seededNetworks = Array.from({ length: SEEDS }, (_, place) => place + 1).flatMap((seed) =>
  ([10, 40, 100] as const).flatMap((count) =>
    (["K only", "with friction"] as const).map((losses) => ({ seed, count, losses })),
  ),
);
