//! Thermocouples: EMF and temperature by the ITS-90 reference functions.
//!
//! The reference function of each letter-designated type gives the EMF in millivolts of a couple
//! whose reference junction is at 0 °C; its coefficients are in °C and mV and are used so. The
//! inverse has no closed form: the published inverse polynomial (within 0.06 K) is the start of one
//! Newton step of higher order on the reference function itself, so that the two directions agree to
//! rounding.
//!
//! Source of all direct and inverse coefficients: NIST Standard Reference Database 60, *ITS-90
//! Thermocouple Database*, which reproduces NIST Monograph 175 (1993); IEC 60584-1:2013 gives the
//! same functions, with type K only to 1300 °C. They were taken from a machine-read copy of the
//! database (2026). All 161 direct coefficients equal those of a second copy read from it by others in
//! 2014; the inverse polynomials are checked below against the error bands the database states.
//!
//! At some joins of two pieces the reference functions themselves step by up to 7.5e-8 mV (J at
//! 760 °C, 1.2e-6 K; B at 630.615 °C, 3.5e-7 K; others less). Where the step is downward two
//! temperatures within that distance share one EMF and the inverse gives one of them.

use crate::math::{exp, sqrt};
use crate::quantity::Value;
use crate::quantity::types::{ElectricPotential, PotentialPerTemperature, ThermodynamicTemperature};

/// The letter-designated thermocouple types of IEC 60584-1 with base and noble metals in common use.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ThermocoupleType {
    /// Platinum-30 % rhodium against platinum-6 % rhodium, 0 to 1820 °C.
    B,
    /// Nickel-chromium against copper-nickel, -270 to 1000 °C.
    E,
    /// Iron against copper-nickel, -210 to 1200 °C.
    J,
    /// Nickel-chromium against nickel-aluminium, -270 to 1372 °C; the usual flue probe.
    K,
    /// Nickel-chromium-silicon against nickel-silicon, -270 to 1300 °C.
    N,
    /// Platinum-13 % rhodium against platinum, -50 to 1768.1 °C.
    R,
    /// Platinum-10 % rhodium against platinum, -50 to 1768.1 °C.
    S,
    /// Copper against copper-nickel, -270 to 400 °C.
    T,
}

/// One piece of a reference function: a polynomial in °C above `origin`, constant term first, giving
/// mV, with the Gaussian term that type K has above 0 °C.
///
/// The published origin is 0 °C. Below -200 °C the published sums lose four digits to cancellation,
/// which the flat curve there turns into 5e-9 K; there the same polynomial is used re-expanded about
/// -235 °C (exactly, in 60 digits, then rounded once).
struct Direct {
    origin: f64,
    coefficients: &'static [f64],
    bump: Option<Bump>,
}

/// `height * exp(curvature * (t - centre)^2)`, in mV, 1/K² and °C.
struct Bump {
    height: f64,
    curvature: f64,
    centre: f64,
}

/// Where the inverse starts: good to a few hundredths of a kelvin.
enum Start {
    /// The published inverse polynomial in mV.
    Published(&'static [f64]),
    /// A polynomial in the square root of the EMF above `below`, for the ends where the EMF curve
    /// flattens and nothing is published. Fitted here to the reference function, largest error
    /// 0.012 K; only a start, so the result does not depend on it.
    Root { below: f64, coefficients: &'static [f64] },
}

/// One range of the inverse, up to `highest_millivolt`, lying in one piece of the direct function.
struct Inverse {
    highest_millivolt: f64,
    direct: &'static Direct,
    start: Start,
}

/// Both directions of one type. `direct` pairs each piece with the temperature it reaches to.
struct Curve {
    lowest_celsius: f64,
    direct: &'static [(f64, &'static Direct)],
    lowest_millivolt: f64,
    inverse: &'static [Inverse],
}

/// A polynomial, constant term first, by its even and odd powers side by side: half the wait of
/// Horner's scheme, which matters where everything else waits for it.
fn polynomial_in_halves(coefficients: &[f64], x: f64) -> f64 {
    let square = x * x;
    let (mut even, mut odd) = (0.0, 0.0);
    let (pairs, last) = coefficients.as_chunks::<2>();
    if let [constant] = last {
        even = *constant;
    }
    for [constant, linear] in pairs.iter().rev() {
        even = even * square + constant;
        odd = odd * square + linear;
    }
    even + x * odd
}

fn polynomial(coefficients: &[f64], x: f64) -> f64 {
    coefficients.iter().rev().fold(0.0, |sum, c| sum * x + c)
}

impl Direct {
    fn emf(&self, celsius: f64) -> f64 {
        let smooth = polynomial(self.coefficients, celsius - self.origin);
        match &self.bump {
            None => smooth,
            Some(bump) => {
                let offset = celsius - bump.centre;
                smooth + bump.height * exp(bump.curvature * offset * offset)
            }
        }
    }

    /// EMF in mV and the coefficients of the first three powers of its Taylor series about a
    /// temperature in °C; the first is the Seebeck coefficient in mV/K.
    fn emf_and_taylor(&self, celsius: f64) -> [f64; 4] {
        let x = celsius - self.origin;
        let (mut emf, mut first, mut second, mut third) = (0.0, 0.0, 0.0, 0.0);
        for c in self.coefficients.iter().rev() {
            third = third * x + second;
            second = second * x + first;
            first = first * x + emf;
            emf = emf * x + c;
        }
        if let Some(bump) = &self.bump {
            let offset = celsius - bump.centre;
            let term = bump.height * exp(bump.curvature * offset * offset);
            let (p, q) = (2.0 * bump.curvature * offset, 2.0 * bump.curvature);
            emf += term;
            first += p * term;
            second += (p * p + q) * term / 2.0;
            third += p * (p * p + 3.0 * q) * term / 6.0;
        }
        [emf, first, second, third]
    }
}

impl Curve {
    fn direct_at(&self, celsius: f64) -> Option<&'static Direct> {
        if celsius >= self.lowest_celsius {
            self.direct.iter().find(|(highest, _)| celsius <= *highest).map(|(_, piece)| *piece)
        } else {
            None
        }
    }
}

impl ThermocoupleType {
    /// Every type, in the order of the alphabet.
    pub const ALL: [Self; 8] = [Self::B, Self::E, Self::J, Self::K, Self::N, Self::R, Self::S, Self::T];

    fn curve(self) -> &'static Curve {
        match self {
            Self::B => &B_CURVE,
            Self::E => &E_CURVE,
            Self::J => &J_CURVE,
            Self::K => &K_CURVE,
            Self::N => &N_CURVE,
            Self::R => &R_CURVE,
            Self::S => &S_CURVE,
            Self::T => &T_CURVE,
        }
    }

    /// Letter of the type.
    pub const fn letter(self) -> &'static str {
        match self {
            Self::B => "B",
            Self::E => "E",
            Self::J => "J",
            Self::K => "K",
            Self::N => "N",
            Self::R => "R",
            Self::S => "S",
            Self::T => "T",
        }
    }

    /// Lowest and highest temperature of the reference function, °C.
    pub(crate) fn range_celsius(self) -> (f64, f64) {
        let curve = self.curve();
        (curve.lowest_celsius, curve.direct.last().map_or(f64::NAN, |(highest, _)| *highest))
    }

    /// EMF at a temperature, reference junction at 0 °C; not a number outside the range of the type.
    ///
    /// ```
    /// use flamewright::instrument::ThermocoupleType;
    /// use flamewright::quantity::{Value, types::ThermodynamicTemperature};
    /// let emf = ThermocoupleType::K.emf(ThermodynamicTemperature::from_si(373.15));
    /// assert!((emf.si() - 4.096e-3).abs() < 0.5e-6);
    /// assert!((ThermocoupleType::K.temperature(emf).si() - 373.15).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn emf(self, temperature: ThermodynamicTemperature) -> ElectricPotential {
        ElectricPotential::from_si(self.emf_millivolt(temperature.si() - 273.15) * 1e-3)
    }

    /// Temperature for an EMF referred to 0 °C, the inverse of [`Self::emf`]; not a number outside the
    /// range of the type, and for type B at or below 0 mV, where two temperatures share each EMF.
    ///
    /// An EMF measured against a reference junction elsewhere is first increased by the EMF of that
    /// junction; its temperature is never added.
    #[must_use]
    pub fn temperature(self, emf: ElectricPotential) -> ThermodynamicTemperature {
        ThermodynamicTemperature::from_si(self.temperature_celsius(emf.si() * 1e3) + 273.15)
    }

    /// Seebeck coefficient at a temperature; not a number outside the range of the type.
    #[must_use]
    pub fn seebeck_coefficient(self, temperature: ThermodynamicTemperature) -> PotentialPerTemperature {
        PotentialPerTemperature::from_si(self.seebeck_millivolt_per_kelvin(temperature.si() - 273.15) * 1e-3)
    }

    /// EMF in mV at a temperature in °C, reference junction at 0 °C. NaN outside the range.
    fn emf_millivolt(self, celsius: f64) -> f64 {
        self.curve().direct_at(celsius).map_or(f64::NAN, |piece| piece.emf(celsius))
    }

    /// Seebeck coefficient in mV/K at a temperature in °C. NaN outside the range.
    fn seebeck_millivolt_per_kelvin(self, celsius: f64) -> f64 {
        self.curve().direct_at(celsius).map_or(f64::NAN, |piece| {
            let [_, slope, ..] = piece.emf_and_taylor(celsius);
            slope
        })
    }

    /// Temperature in °C for an EMF in mV referred to 0 °C.
    ///
    /// NaN outside the range, and for type B at or below 0 mV: its EMF falls before it rises, so
    /// that every temperature below 42.2 °C shares its EMF with another one.
    fn temperature_celsius(self, millivolt: f64) -> f64 {
        let curve = self.curve();
        // Type B: zero itself belongs to two temperatures.
        if millivolt <= curve.lowest_millivolt {
            return f64::NAN;
        }
        let Some(piece) = curve.inverse.iter().find(|piece| millivolt <= piece.highest_millivolt) else {
            return f64::NAN;
        };
        let start = match piece.start {
            Start::Published(coefficients) => polynomial_in_halves(coefficients, millivolt),
            Start::Root { below, coefficients } => polynomial_in_halves(coefficients, sqrt(millivolt - below)),
        };
        let [emf, slope, half_second, sixth_third] = piece.direct.emf_and_taylor(start);
        // Newton's step, and the two terms that follow it when the Taylor series is reverted: one
        // evaluation of the reference function then does the work of three steps.
        let per_slope = 1.0 / slope;
        let step = (millivolt - emf) * per_slope;
        let (bend, twist) = (half_second * per_slope, sixth_third * per_slope);
        start + step * (1.0 - step * (bend - step * (2.0 * bend * bend - twist)))
    }

    /// The manufacturing tolerance of a class; none where the type has no such class.
    ///
    /// Source: tolerance table of IEC 60584-1:2013 (formerly IEC 60584-2), from two public
    /// reproductions of it that agree; the standard itself was not opened.
    pub(crate) fn tolerance(self, class: ThermocoupleClass) -> Option<Tolerance> {
        use ThermocoupleClass::{One, Three, Two};
        let linear = |lowest, highest, least, slope| Some(Tolerance { lowest, highest, least, slope, from: 0.0 });
        match (self, class) {
            (Self::T, One) => linear(-40.0, 350.0, 0.5, 0.004),
            (Self::T, Two) => linear(-40.0, 350.0, 1.0, 0.0075),
            (Self::T, Three) => linear(-200.0, 40.0, 1.0, 0.015),
            (Self::E, One) => linear(-40.0, 800.0, 1.5, 0.004),
            (Self::J, One) => linear(-40.0, 750.0, 1.5, 0.004),
            (Self::K | Self::N, One) => linear(-40.0, 1000.0, 1.5, 0.004),
            (Self::E, Two) => linear(-40.0, 900.0, 2.5, 0.0075),
            (Self::J, Two) => linear(-40.0, 750.0, 2.5, 0.0075),
            (Self::K | Self::N, Two) => linear(-40.0, 1200.0, 2.5, 0.0075),
            (Self::E | Self::K | Self::N, Three) => linear(-200.0, 40.0, 2.5, 0.015),
            (Self::R | Self::S, One) => Some(Tolerance { lowest: 0.0, highest: 1600.0, least: 1.0, slope: 0.003, from: 1100.0 }),
            (Self::R | Self::S, Two) => linear(0.0, 1600.0, 1.5, 0.0025),
            (Self::B, Two) => linear(600.0, 1700.0, 1.5, 0.0025),
            (Self::B, Three) => linear(600.0, 1700.0, 4.0, 0.005),
            (Self::J | Self::R | Self::S, Three) | (Self::B, One) => None,
        }
    }
}

/// A tolerance as IEC 60584-1 states it: a least half-width or a share of the temperature.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Tolerance {
    lowest: f64,
    highest: f64,
    /// Half-width in K that holds at least.
    least: f64,
    /// Growth of the half-width per kelvin.
    slope: f64,
    /// 0, or the temperature in °C from which the slope is added to the least half-width.
    from: f64,
}

impl Tolerance {
    /// Half-width in K at a temperature in °C, also beyond where the class is defined.
    pub(crate) fn kelvin(self, celsius: f64) -> f64 {
        if self.from > 0.0 { self.least + self.slope * (celsius - self.from).max(0.0) } else { self.least.max(self.slope * celsius.abs()) }
    }

    /// Whether the class is defined at a temperature in °C.
    pub(crate) fn reaches(self, celsius: f64) -> bool {
        celsius >= self.lowest && celsius <= self.highest
    }
}

/// Tolerance class of IEC 60584-1.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ThermocoupleClass {
    /// Class 1, the closest.
    One,
    /// Class 2.
    Two,
    /// Class 3, mainly for low temperatures.
    Three,
}

static B_DIRECT_1: Direct = Direct {
    origin: 0.0,
    coefficients: &[0.0, -0.00024650818346, 5.9040421171e-06, -1.3257931636e-09, 1.5668291901e-12, -1.694452924e-15, 6.2990347094e-19],
    bump: None,
};
static B_DIRECT_2: Direct = Direct {
    origin: 0.0,
    coefficients: &[
        -3.8938168621,
        0.02857174747,
        -8.4885104785e-05,
        1.5785280164e-07,
        -1.6835344864e-10,
        1.1109794013e-13,
        -4.4515431033e-17,
        9.8975640821e-21,
        -9.3791330289e-25,
    ],
    bump: None,
};
static B_INVERSE_1: &[f64] = &[98.423321, 699.715, -847.65304, 1005.2644, -833.45952, 455.08542, -155.23037, 29.88675, -2.474286];
static B_INVERSE_2: &[f64] =
    &[213.15071, 285.10504, -52.742887, 9.9160804, -1.2965303, 0.1119587, -0.0060625199, 0.00018661696, -2.4878585e-06];
static B_INVERSE_LOW: &[f64] = &[21.01248, 414.5377, 16.48305, -3.611613];
static B_CURVE: Curve = Curve {
    lowest_celsius: 0.0,
    direct: &[(630.615, &B_DIRECT_1), (1820.0, &B_DIRECT_2)],
    lowest_millivolt: 0.0,
    inverse: &[
        Inverse { highest_millivolt: 0.291, direct: &B_DIRECT_1, start: Start::Root { below: -0.002585, coefficients: B_INVERSE_LOW } },
        Inverse { highest_millivolt: 1.978_373_522_1, direct: &B_DIRECT_1, start: Start::Published(B_INVERSE_1) },
        Inverse { highest_millivolt: 2.431, direct: &B_DIRECT_2, start: Start::Published(B_INVERSE_1) },
        Inverse { highest_millivolt: 13.820_279_215_2, direct: &B_DIRECT_2, start: Start::Published(B_INVERSE_2) },
    ],
};

static E_DIRECT_1: Direct = Direct {
    origin: 0.0,
    coefficients: &[
        0.0,
        0.058665508708,
        4.5410977124e-05,
        -7.7998048686e-07,
        -2.5800160843e-08,
        -5.9452583057e-10,
        -9.3214058667e-12,
        -1.0287605534e-13,
        -8.0370123621e-16,
        -4.3979497391e-18,
        -1.6414776355e-20,
        -3.9673619516e-23,
        -5.5827328721e-26,
        -3.4657842013e-29,
    ],
    bump: None,
};
static E_DIRECT_2: Direct = Direct {
    origin: 0.0,
    coefficients: &[
        0.0,
        0.05866550871,
        4.5032275582e-05,
        2.8908407212e-08,
        -3.3056896652e-10,
        6.502440327e-13,
        -1.9197495504e-16,
        -1.2536600497e-18,
        2.1489217569e-21,
        -1.4388041782e-24,
        3.5960899481e-28,
    ],
    bump: None,
};
static E_DIRECT_COLD: Direct = Direct {
    origin: -235.0,
    coefficients: &[
        -9.533653051426835,
        0.01490303727919332,
        0.0001673943403438687,
        -3.73986497021382e-07,
        -2.5116399897565653e-09,
        3.127827709553402e-11,
        9.690451208497584e-13,
        -2.842489537982969e-14,
        3.487595921231456e-16,
        -2.5076131489150082e-18,
        1.1297841449659389e-20,
        -3.153093988587815e-23,
        5.0052378628715e-26,
        -3.4657842013e-29,
    ],
    bump: None,
};
static E_INVERSE_1: &[f64] =
    &[0.0, 16.977288, -0.4351497, -0.15859697, -0.092502871, -0.026084314, -0.0041360199, -0.0003403403, -1.156489e-05];
static E_INVERSE_2: &[f64] = &[
    0.0,
    17.057035,
    -0.23301759,
    0.0065435585,
    -7.3562749e-05,
    -1.7896001e-06,
    8.4036165e-08,
    -1.3735879e-09,
    1.0629823e-11,
    -3.2447087e-14,
];
static E_INVERSE_LOW: &[f64] = &[-272.9077, 58.43979, 35.42823, -46.27745, 34.56527, -9.755988];
static E_CURVE: Curve = Curve {
    lowest_celsius: -270.0,
    direct: &[(-200.0, &E_DIRECT_COLD), (0.0, &E_DIRECT_1), (1000.0, &E_DIRECT_2)],
    lowest_millivolt: -9.834_950_856_2,
    inverse: &[
        Inverse { highest_millivolt: -8.825, direct: &E_DIRECT_COLD, start: Start::Root { below: -9.8373, coefficients: E_INVERSE_LOW } },
        Inverse { highest_millivolt: 0.0, direct: &E_DIRECT_1, start: Start::Published(E_INVERSE_1) },
        Inverse { highest_millivolt: 76.372_826_455, direct: &E_DIRECT_2, start: Start::Published(E_INVERSE_2) },
    ],
};

static J_DIRECT_1: Direct = Direct {
    origin: 0.0,
    coefficients: &[
        0.0,
        0.050381187815,
        3.047583693e-05,
        -8.568106572e-08,
        1.3228195295e-10,
        -1.7052958337e-13,
        2.0948090697e-16,
        -1.2538395336e-19,
        1.5631725697e-23,
    ],
    bump: None,
};
static J_DIRECT_2: Direct = Direct {
    origin: 0.0,
    coefficients: &[296.45625681, -1.4976127786, 0.0031787103924, -3.1847686701e-06, 1.5720819004e-09, -3.0691369056e-13],
    bump: None,
};
static J_INVERSE_1: &[f64] =
    &[0.0, 19.528268, -1.2286185, -1.0752178, -0.59086933, -0.17256713, -0.028131513, -0.002396337, -8.3823321e-05];
static J_INVERSE_2: &[f64] = &[0.0, 19.78425, -0.2001204, 0.01036969, -0.0002549687, 3.585153e-06, -5.344285e-08, 5.09989e-10];
static J_INVERSE_3: &[f64] = &[-3113.58187, 300.543684, -9.9477323, 0.17027663, -0.00143033468, 4.73886084e-06];
static J_CURVE: Curve = Curve {
    lowest_celsius: -210.0,
    direct: &[(760.0, &J_DIRECT_1), (1200.0, &J_DIRECT_2)],
    lowest_millivolt: -8.095_379_649_4,
    inverse: &[
        Inverse { highest_millivolt: 0.0, direct: &J_DIRECT_1, start: Start::Published(J_INVERSE_1) },
        Inverse { highest_millivolt: 42.918_641_37, direct: &J_DIRECT_1, start: Start::Published(J_INVERSE_2) },
        Inverse { highest_millivolt: 69.553_179_788_5, direct: &J_DIRECT_2, start: Start::Published(J_INVERSE_3) },
    ],
};

static K_DIRECT_1: Direct = Direct {
    origin: 0.0,
    coefficients: &[
        0.0,
        0.039450128025,
        2.3622373598e-05,
        -3.2858906784e-07,
        -4.9904828777e-09,
        -6.7509059173e-11,
        -5.7410327428e-13,
        -3.1088872894e-15,
        -1.0451609365e-17,
        -1.9889266878e-20,
        -1.6322697486e-23,
    ],
    bump: None,
};
static K_DIRECT_2: Direct = Direct {
    origin: 0.0,
    coefficients: &[
        -0.017600413686,
        0.038921204975,
        1.8558770032e-05,
        -9.9457592874e-08,
        3.1840945719e-10,
        -5.6072844889e-13,
        5.6075059059e-16,
        -3.2020720003e-19,
        9.7151147152e-23,
        -1.2104721275e-26,
    ],
    bump: Some(Bump { height: 0.1185976, curvature: -0.0001183432, centre: 126.9686 }),
};
static K_DIRECT_COLD: Direct = Direct {
    origin: -235.0,
    coefficients: &[
        -6.305569747084098,
        0.008202544027166796,
        0.0001095127595816656,
        -1.409841756397236e-07,
        -1.6067690905706083e-09,
        3.7427922342931475e-11,
        -3.9319634487589605e-13,
        2.41835815298287e-15,
        -8.94975350792575e-18,
        1.84690722141e-20,
        -1.6322697486e-23,
    ],
    bump: None,
};
static K_INVERSE_1: &[f64] = &[0.0, 25.173462, -1.1662878, -1.0833638, -0.8977354, -0.37342377, -0.086632643, -0.010450598, -0.00051920577];
static K_INVERSE_2: &[f64] =
    &[0.0, 25.08355, 0.07860106, -0.2503131, 0.0831527, -0.01228034, 0.0009804036, -4.41303e-05, 1.057734e-06, -1.052755e-08];
static K_INVERSE_3: &[f64] = &[-131.8058, 48.30222, -1.646031, 0.05464731, -0.0009650715, 8.802193e-06, -3.11081e-08];
static K_INVERSE_LOW: &[f64] = &[-274.6173, 116.37, -79.20983, 146.5611, -133.0522, 49.74573];
static K_CURVE: Curve = Curve {
    lowest_celsius: -270.0,
    direct: &[(-200.0, &K_DIRECT_COLD), (0.0, &K_DIRECT_1), (1372.0, &K_DIRECT_2)],
    lowest_millivolt: -6.457_737_952_8,
    inverse: &[
        Inverse { highest_millivolt: -5.891, direct: &K_DIRECT_COLD, start: Start::Root { below: -6.4594, coefficients: K_INVERSE_LOW } },
        Inverse { highest_millivolt: 0.0, direct: &K_DIRECT_1, start: Start::Published(K_INVERSE_1) },
        Inverse { highest_millivolt: 20.644, direct: &K_DIRECT_2, start: Start::Published(K_INVERSE_2) },
        Inverse { highest_millivolt: 54.886_364_025_4, direct: &K_DIRECT_2, start: Start::Published(K_INVERSE_3) },
    ],
};

static N_DIRECT_1: Direct = Direct {
    origin: 0.0,
    coefficients: &[
        0.0,
        0.026159105962,
        1.0957484228e-05,
        -9.3841111554e-08,
        -4.6412039759e-11,
        -2.6303357716e-12,
        -2.2653438003e-14,
        -7.6089300791e-17,
        -9.3419667835e-20,
    ],
    bump: None,
};
static N_DIRECT_2: Direct = Direct {
    origin: 0.0,
    coefficients: &[
        0.0,
        0.025929394601,
        1.571014188e-05,
        4.3825627237e-08,
        -2.5261169794e-10,
        6.4311819339e-13,
        -1.0063471519e-15,
        9.9745338992e-19,
        -6.0863245607e-22,
        2.0849229339e-25,
        -3.0682196151e-29,
    ],
    bump: None,
};
static N_DIRECT_COLD: Direct = Direct {
    origin: -235.0,
    coefficients: &[
        -4.253506434494028,
        0.005048865542265725,
        7.141531599148712e-05,
        4.4846270021209196e-09,
        -1.1033943007924334e-09,
        8.96211866821996e-12,
        -4.19413705750655e-14,
        9.95396747388e-17,
        -9.3419667835e-20,
    ],
    bump: None,
};
static N_INVERSE_1: &[f64] = &[0.0, 38.436847, 1.1010485, 5.2229312, 7.2060525, 5.8488586, 2.7754916, 0.77075166, 0.11582665, 0.0073138868];
static N_INVERSE_2: &[f64] = &[0.0, 38.6896, -1.08267, 0.0470205, -2.12169e-06, -0.000117272, 5.3928e-06, -7.98156e-08];
static N_INVERSE_3: &[f64] = &[19.72485, 33.00943, -0.3915159, 0.009855391, -0.0001274371, 7.767022e-07];
static N_INVERSE_LOW: &[f64] = &[-272.8461, 132.2566, -36.51406, 44.10665, -18.60343];
static N_CURVE: Curve = Curve {
    lowest_celsius: -270.0,
    direct: &[(-200.0, &N_DIRECT_COLD), (0.0, &N_DIRECT_1), (1300.0, &N_DIRECT_2)],
    lowest_millivolt: -4.345_135_447_2,
    inverse: &[
        Inverse { highest_millivolt: -3.990, direct: &N_DIRECT_COLD, start: Start::Root { below: -4.3456, coefficients: N_INVERSE_LOW } },
        Inverse { highest_millivolt: 0.0, direct: &N_DIRECT_1, start: Start::Published(N_INVERSE_1) },
        Inverse { highest_millivolt: 20.613, direct: &N_DIRECT_2, start: Start::Published(N_INVERSE_2) },
        Inverse { highest_millivolt: 47.512_772_180_9, direct: &N_DIRECT_2, start: Start::Published(N_INVERSE_3) },
    ],
};

static R_DIRECT_1: Direct = Direct {
    origin: 0.0,
    coefficients: &[
        0.0,
        0.00528961729765,
        1.39166589782e-05,
        -2.38855693017e-08,
        3.56916001063e-11,
        -4.62347666298e-14,
        5.00777441034e-17,
        -3.73105886191e-20,
        1.57716482367e-23,
        -2.81038625251e-27,
    ],
    bump: None,
};
static R_DIRECT_2: Direct = Direct {
    origin: 0.0,
    coefficients: &[2.95157925316, -0.00252061251332, 1.59564501865e-05, -7.64085947576e-09, 2.05305291024e-12, -2.93359668173e-16],
    bump: None,
};
static R_DIRECT_3: Direct = Direct {
    origin: 0.0,
    coefficients: &[152.232118209, -0.268819888545, 0.000171280280471, -3.45895706453e-08, -9.34633971046e-15],
    bump: None,
};
static R_INVERSE_1: &[f64] =
    &[0.0, 188.9138, -93.83529, 130.68619, -227.0358, 351.45659, -389.539, 282.39471, -126.07281, 31.353611, -3.3187769];
static R_INVERSE_2: &[f64] = &[
    13.34584505,
    147.2644573,
    -18.44024844,
    4.031129726,
    -0.624942836,
    0.06468412046,
    -0.004458750426,
    0.0001994710149,
    -5.31340179e-06,
    6.481976217e-08,
];
static R_INVERSE_3: &[f64] = &[-81.99599416, 155.3962042, -8.342197663, 0.4279433549, -0.0119157791, 0.0001492290091];
static R_INVERSE_4: &[f64] = &[34061.77836, -7023.729171, 558.2903813, -19.52394635, 0.2560740231];
static R_CURVE: Curve = Curve {
    lowest_celsius: -50.0,
    direct: &[(1064.18, &R_DIRECT_1), (1664.5, &R_DIRECT_2), (1768.1, &R_DIRECT_3)],
    lowest_millivolt: -0.226_465_188_2,
    inverse: &[
        Inverse { highest_millivolt: 1.923, direct: &R_DIRECT_1, start: Start::Published(R_INVERSE_1) },
        Inverse { highest_millivolt: 11.363_744_766_94, direct: &R_DIRECT_1, start: Start::Published(R_INVERSE_2) },
        Inverse { highest_millivolt: 19.738_829_104_0, direct: &R_DIRECT_2, start: Start::Published(R_INVERSE_3) },
        Inverse { highest_millivolt: 21.102_702_348, direct: &R_DIRECT_3, start: Start::Published(R_INVERSE_4) },
    ],
};

static S_DIRECT_1: Direct = Direct {
    origin: 0.0,
    coefficients: &[
        0.0,
        0.00540313308631,
        1.2593428974e-05,
        -2.32477968689e-08,
        3.22028823036e-11,
        -3.31465196389e-14,
        2.55744251786e-17,
        -1.25068871393e-20,
        2.71443176145e-24,
    ],
    bump: None,
};
static S_DIRECT_2: Direct = Direct {
    origin: 0.0,
    coefficients: &[1.32900444085, 0.00334509311344, 6.54805192818e-06, -1.64856259209e-09, 1.29989605174e-14],
    bump: None,
};
static S_DIRECT_3: Direct = Direct {
    origin: 0.0,
    coefficients: &[146.628232636, -0.258430516752, 0.000163693574641, -3.30439046987e-08, -9.43223690612e-15],
    bump: None,
};
static S_INVERSE_1: &[f64] =
    &[0.0, 184.94946, -80.0504062, 102.23743, -152.248592, 188.821343, -159.085941, 82.302788, -23.4181944, 2.7978626];
static S_INVERSE_2: &[f64] = &[
    12.91507177,
    146.6298863,
    -15.34713402,
    3.145945973,
    -0.4163257839,
    0.03187963771,
    -0.0012916375,
    2.183475087e-05,
    -1.447379511e-07,
    8.211272125e-09,
];
static S_INVERSE_3: &[f64] = &[-80.87801117, 162.1573104, -8.536869453, 0.4719686976, -0.01441693666, 0.000208161889];
static S_INVERSE_4: &[f64] = &[53338.75126, -12358.92298, 1092.657613, -42.65693686, 0.624720542];
static S_CURVE: Curve = Curve {
    lowest_celsius: -50.0,
    direct: &[(1064.18, &S_DIRECT_1), (1664.5, &S_DIRECT_2), (1768.1, &S_DIRECT_3)],
    lowest_millivolt: -0.235_555_071_5,
    inverse: &[
        Inverse { highest_millivolt: 1.874, direct: &S_DIRECT_1, start: Start::Published(S_INVERSE_1) },
        Inverse { highest_millivolt: 10.334_204_388_95, direct: &S_DIRECT_1, start: Start::Published(S_INVERSE_2) },
        Inverse { highest_millivolt: 17.535_957_201_8, direct: &S_DIRECT_2, start: Start::Published(S_INVERSE_3) },
        Inverse { highest_millivolt: 18.693_541_328, direct: &S_DIRECT_3, start: Start::Published(S_INVERSE_4) },
    ],
};

static T_DIRECT_1: Direct = Direct {
    origin: 0.0,
    coefficients: &[
        0.0,
        0.038748106364,
        4.4194434347e-05,
        1.1844323105e-07,
        2.0032973554e-08,
        9.0138019559e-10,
        2.2651156593e-11,
        3.6071154205e-13,
        3.8493939883e-15,
        2.8213521925e-17,
        1.4251594779e-19,
        4.8768662286e-22,
        1.079553927e-24,
        1.3945027062e-27,
        7.9795153927e-31,
    ],
    bump: None,
};
static T_DIRECT_2: Direct = Direct {
    origin: 0.0,
    coefficients: &[
        0.0,
        0.038748106364,
        3.329222788e-05,
        2.0618243404e-07,
        -2.1882256846e-09,
        1.0996880928e-11,
        -3.0815758772e-14,
        4.547913529e-17,
        -2.7512901673e-20,
    ],
    bump: None,
};
static T_DIRECT_COLD: Direct = Direct {
    origin: -235.0,
    coefficients: &[
        -6.058524004624106,
        0.009840687615104704,
        0.00010777007736816668,
        -5.209025996985057e-07,
        -3.4496761212444967e-09,
        1.772330917137918e-10,
        -6.683206266212331e-13,
        -4.926526424095279e-14,
        1.0939741506581525e-15,
        -1.1750863180990166e-17,
        7.674785765895046e-20,
        -3.1924570029231905e-22,
        8.294336713719032e-25,
        -1.2307578579983e-27,
        7.9795153927e-31,
    ],
    bump: None,
};
static T_INVERSE_1: &[f64] = &[0.0, 25.949192, -0.21316967, 0.79018692, 0.42527777, 0.13304473, 0.020241446, 0.0012668171];
static T_INVERSE_2: &[f64] = &[0.0, 25.928, -0.7602961, 0.04637791, -0.002165394, 6.048144e-05, -7.293422e-07];
static T_INVERSE_LOW: &[f64] = &[-272.2387, 61.04458, 116.5857, -247.6883, 266.1418, -105.0199];
static T_CURVE: Curve = Curve {
    lowest_celsius: -270.0,
    direct: &[(-200.0, &T_DIRECT_COLD), (0.0, &T_DIRECT_1), (400.0, &T_DIRECT_2)],
    lowest_millivolt: -6.257_505_037_9,
    inverse: &[
        Inverse { highest_millivolt: -5.603, direct: &T_DIRECT_COLD, start: Start::Root { below: -6.2587, coefficients: T_INVERSE_LOW } },
        Inverse { highest_millivolt: 0.0, direct: &T_DIRECT_1, start: Start::Published(T_INVERSE_1) },
        Inverse { highest_millivolt: 20.871_970_050_6, direct: &T_DIRECT_2, start: Start::Published(T_INVERSE_2) },
    ],
};

#[cfg(test)]
mod tests {
    use super::*;
    use std::vec::Vec;

    /// Temperatures over the whole range, dense, with the joins and points just beside them.
    fn temperatures(kind: ThermocoupleType) -> Vec<f64> {
        let (lowest, highest) = kind.range_celsius();
        let lowest = if kind == ThermocoupleType::B { 42.2 } else { lowest };
        let mut all: Vec<f64> = (0..=40_000).map(|i| lowest + (highest - lowest) * f64::from(i) / 40_000.0).collect();
        for (join, _) in kind.curve().direct {
            all.extend([-1e-3, -1e-5, 0.0, 1e-5, 1e-3].map(|d| join + d));
        }
        all.retain(|t| (lowest..=highest).contains(t));
        all
    }

    #[test]
    fn round_trip_over_the_full_range() {
        for kind in ThermocoupleType::ALL {
            let mut worst = (0.0, 0.0);
            for t in temperatures(kind) {
                let deviation = (kind.temperature_celsius(kind.emf_millivolt(t)) - t).abs();
                assert!(deviation.is_finite(), "type {kind:?} at {t}");
                if deviation > worst.0 {
                    worst = (deviation, t);
                }
            }
            assert!(worst.0 < 1e-9, "type {kind:?}: {worst:?}");
        }
    }

    #[test]
    fn published_inverse_stays_in_its_stated_error_band() {
        // Largest error the database states for the inverse polynomials of each type, K.
        for (kind, band) in ThermocoupleType::ALL.into_iter().zip([0.03, 0.03, 0.05, 0.06, 0.04, 0.02, 0.02, 0.04]) {
            for t in temperatures(kind) {
                let emf = kind.emf_millivolt(t);
                let Some(piece) = kind.curve().inverse.iter().find(|piece| emf <= piece.highest_millivolt) else {
                    panic!("type {kind:?} at {t}");
                };
                let (start, allowed) = match piece.start {
                    Start::Published(coefficients) => (polynomial(coefficients, emf), band),
                    Start::Root { below, coefficients } => (polynomial(coefficients, sqrt(emf - below)), 0.0125),
                };
                // The bands are printed to a hundredth.
                assert!((start - t).abs() < allowed + 0.005, "type {kind:?} at {t}: {start}");
            }
        }
    }

    /// Rows of the tables of NIST SRD 60 (°C, mV to 0.001), from memory.
    #[test]
    fn table_values_of_every_type() {
        use ThermocoupleType::*;
        for (kind, celsius, millivolt) in [
            (B, 1000.0, 4.834),
            (B, 1500.0, 10.099),
            (B, 500.0, 1.242),
            (E, -100.0, -5.237),
            (E, 100.0, 6.319),
            (E, 500.0, 37.005),
            (J, -100.0, -4.633),
            (J, 100.0, 5.269),
            (J, 500.0, 27.393),
            (J, 1000.0, 57.953),
            (K, -200.0, -5.891),
            (K, -100.0, -3.554),
            (K, 100.0, 4.096),
            (K, 1000.0, 41.276),
            (N, -100.0, -2.407),
            (N, 100.0, 2.774),
            (N, 500.0, 16.748),
            (N, 1000.0, 36.256),
            (R, 100.0, 0.647),
            (R, 500.0, 4.471),
            (R, 1000.0, 10.506),
            (R, 1500.0, 17.451),
            (S, 100.0, 0.646),
            (S, 500.0, 4.233),
            (S, 1000.0, 9.587),
            (S, 1500.0, 15.582),
            (T, -200.0, -5.603),
            (T, -100.0, -3.379),
            (T, 100.0, 4.279),
            (T, 200.0, 9.288),
        ] {
            let emf = kind.emf_millivolt(celsius);
            assert!((emf - millivolt).abs() < 0.000_51, "type {kind:?} at {celsius}: {emf}");
        }
    }

    #[test]
    fn cold_pieces_are_the_published_polynomials() {
        for (cold, published) in
            [(&E_DIRECT_COLD, &E_DIRECT_1), (&K_DIRECT_COLD, &K_DIRECT_1), (&N_DIRECT_COLD, &N_DIRECT_1), (&T_DIRECT_COLD, &T_DIRECT_1)]
        {
            for celsius in -270..=-150 {
                let celsius = f64::from(celsius);
                assert!((cold.emf(celsius) - published.emf(celsius)).abs() < 1e-10, "{celsius}");
            }
        }
    }

    #[test]
    fn slope_is_the_derivative() {
        for kind in ThermocoupleType::ALL {
            let (lowest, highest) = kind.range_celsius();
            for i in 1..40 {
                let t = lowest + (highest - lowest) * (f64::from(i) + 0.37) / 41.0;
                let difference = (kind.emf_millivolt(t + 1e-3) - kind.emf_millivolt(t - 1e-3)) / 2e-3;
                let slope = kind.seebeck_millivolt_per_kelvin(t);
                assert!((slope - difference).abs() < 1e-8, "type {kind:?} at {t}");
            }
        }
    }

    #[test]
    fn outside_the_range_nothing_is_returned() {
        for kind in ThermocoupleType::ALL {
            let (lowest, highest) = kind.range_celsius();
            for t in [lowest - 0.1, highest + 0.1, f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
                assert!(kind.emf_millivolt(t).is_nan(), "type {kind:?} at {t}");
            }
            for emf in [-20.0, 100.0, f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
                assert!(kind.temperature_celsius(emf).is_nan(), "type {kind:?} at {emf} mV");
            }
        }
        assert!(ThermocoupleType::B.temperature_celsius(0.0).is_nan());
        assert!(ThermocoupleType::B.temperature_celsius(-0.001).is_nan());
    }
}
