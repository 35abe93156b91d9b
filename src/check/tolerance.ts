/** How far a cover (kg DM/ha), an area (ha) or a share (%) may be off by rounding and still keep a rule. */
export const TOLERANCE = 1e-6;
