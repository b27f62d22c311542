/** Units, the ball and the numerics of the flight model. SI inside `flight`; the names say where not. */

/** International yard and mile: 0.9144 m and 1609.344 m exactly. Source: the 1959 international agreement. */
export const METRES_PER_YARD = 0.9144;
export const MS_PER_MPH = 0.44704;

export const RADIANS_PER_DEGREE = Math.PI / 180;
/** rad/s in one revolution a minute. */
export const RADS_PER_RPM = Math.PI / 30;

/** Standard acceleration of free fall, m/s². Source: 3rd CGPM, 1901 (ISO 80000-3). */
export const GRAVITY_MS2 = 9.80665;

/** The heaviest and smallest ball the rules allow. Source: the governing bodies' limits, 45.93 g and 42.67 mm. */
export const BALL_MASS_KG = 0.04593;
export const BALL_RADIUS_M = 0.021335;

/**
 * Spin decay dω/dt = −c·(ρ/1.2)·V·ω/r. Source: Smits & Smith (1994) as given by Nathan and by Penner; the scaling
 * with density follows Nathan's torque form.
 */
export const SPIN_DECAY = 2.0e-5;
export const SPIN_DECAY_DENSITY_KGM3 = 1.2;

/**
 * Fixed step of the integrator: the largest round one that keeps the carry within 1e-3 yd of an adaptive integrator over
 * all that players do. Kinks in the coefficients cap the order near two: test/reference/flight/adaptive.test.ts.
 */
export const STEP_SECONDS = 0.02;

/** Nothing the accepted ranges allow stays up this long; a guard, not a limit anyone should meet. */
export const LONGEST_FLIGHT_SECONDS = 120;
