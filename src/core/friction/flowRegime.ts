/** Up to here the air flows in layers: f = 64 / Re. Reynolds number. */
export const LAMINAR_END = 2000;

/** From here on it is turbulent: Colebrook-White. Reynolds number. */
export const TURBULENT_START = 4000;

/** Darcy friction factor where the laminar law ends. */
export const LAMINAR_END_FACTOR = 64 / LAMINAR_END;
