/** From where on a run is worth a note. Whoever says the same in other words takes the same limits. */

/** Less than this share of the wanted airflow is too little. House judgement, near a meter's own error. */
export const ENOUGH_AIR = 0.95;

/** Beyond this ratio of the paths' suctions a branch is resized rather than throttled. Source: acgihMemory. */
export const RESIZE_RATIO = 1.2;

/** A leak that carries more than this share of a run's air. House judgement. */
export const LEAK_SHARE = 0.1;

/** Air whose density is further from the standard one than this share is another air. House judgement. */
export const OTHER_AIR = 0.005;
