/** Elbows in a field of 72 by 44: air comes from the left and leaves downwards, round the point (40, 34). */
const [X, Y] = [40, 34];
const [OUTER, INNER] = [26, 10];

const at = (radius: number, degrees: number): string => {
  const angle = (degrees * Math.PI) / 180;
  return `${(X + radius * Math.sin(angle)).toFixed(1)} ${(Y - radius * Math.cos(angle)).toFixed(1)}`;
};

export const smoothElbow = `M4 ${Y - OUTER} H${X} A${OUTER} ${OUTER} 0 0 1 ${X + OUTER} ${Y} V43 M4 ${Y - INNER} H${X} A${INNER} ${INNER} 0 0 1 ${X + INNER} ${Y} V43`;

/** An elbow of so many pieces, its two straight ends counted, with the seams between them. */
export function piecedElbow(pieces: number): string {
  const seams = Array.from({ length: pieces - 1 }, (_, i) => ((i + 0.5) * 90) / (pieces - 1));
  const stretch = 1 / Math.cos(Math.PI / 4 / (pieces - 1)); // a corner lies outside the arc
  const side = (radius: number, endX: number): string =>
    `M4 ${Y - radius} ${seams.map((seam) => `L${at(radius * stretch, seam)}`).join(" ")} L${endX} ${Y} V43`;
  const lines = seams.map((seam) => `M${at(INNER * stretch, seam)} L${at(OUTER * stretch, seam)}`);
  return [side(OUTER, X + OUTER), side(INNER, X + INNER), ...lines].join(" ");
}

export const mitreElbow = "M4 10 H64 V43 M4 26 H48 V43 M48 26 L64 10";

/** An elbow before a fan, after a straight piece of that length. */
export const fanInletElbow = (straight: number): string =>
  `M4 43 V20 A16 16 0 0 1 20 4 H${24 + straight} M18 43 V22 A4 4 0 0 1 22 18 H${24 + straight} M${24 + straight} 1 V21 H${24 + straight + 20} V1 Z M${34 + straight} 4 V18`;
