const RAD_PER_DEG = Math.PI / 180;

export function radOfDeg(angleDeg: number): number {
  return angleDeg * RAD_PER_DEG;
}

export function degOfRad(angleRad: number): number {
  return angleRad / RAD_PER_DEG;
}

export function sinDeg(angleDeg: number): number {
  return Math.sin(angleDeg * RAD_PER_DEG);
}

export function cosDeg(angleDeg: number): number {
  return Math.cos(angleDeg * RAD_PER_DEG);
}

export function tanDeg(angleDeg: number): number {
  return Math.tan(angleDeg * RAD_PER_DEG);
}

/** Arc cosine in rad; an argument beyond 1 (no crossing, or rounding) gives the nearer end, 0 or pi. */
export function acosHeldRad(cosine: number): number {
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}

/** The same direction, in [0, 360). */
export function turnDeg(angleDeg: number): number {
  const rest = angleDeg % 360;
  return rest < 0 ? rest + 360 : rest;
}
