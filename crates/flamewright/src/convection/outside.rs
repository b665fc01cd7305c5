//! The film of air outside a pipe, whatever the position of the pipe and whoever's correlation.

use super::Limit;
use super::forced::{CHURCHILL_BERNSTEIN_LIMITS, churchill_bernstein};
use super::natural::{
    FREE_FALL, HorizontalCylinder, VerticalCylinder, churchill_chu_cylinder, churchill_chu_laminar_plate, churchill_chu_plate,
    iso_12241_horizontal, iso_12241_vertical, le_fevre_ede, morgan_cylinder, popiel_factor,
};
use crate::air::properties::dry_air;

/// How the air moves over the pipe, and by which correlation.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OutsideFilm {
    /// Horizontal pipe in still air.
    Horizontal(HorizontalCylinder),
    /// Vertical pipe in still air.
    Vertical(VerticalCylinder),
    /// Wind across the pipe, Churchill & Bernstein 1977; natural convection left out.
    Wind,
}

impl Default for OutsideFilm {
    fn default() -> Self {
        Self::Horizontal(HorizontalCylinder::default())
    }
}

/// The pipe's outside and the air it hangs in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutsideAir {
    /// Outside diameter, over any insulation, in m.
    pub diameter: f64,
    /// Length in m; used by the vertical correlations alone.
    pub length: f64,
    /// Air temperature in K.
    pub air_temperature: f64,
    /// Absolute pressure of the air in Pa.
    pub pressure: f64,
    /// Speed of the air across the pipe in m/s; used by the wind correlation alone.
    pub wind_speed: f64,
}

/// What a correlation made of one surface temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FilmState {
    /// Film coefficient in W/(m² K).
    pub coefficient: f64,
    /// Nusselt number, on the length the correlation is written in.
    pub nusselt: f64,
    /// Rayleigh number on the same length; Reynolds number times Prandtl number for wind.
    pub rayleigh: f64,
    /// Prandtl number at film temperature.
    pub prandtl: f64,
    /// Mean of surface and air temperature in K, at which the air's properties are taken.
    pub film_temperature: f64,
    /// Thermal conductivity of the air at that temperature in W/(m K).
    pub conductivity: f64,
}

impl OutsideFilm {
    /// The length in m on which the correlation's numbers are reckoned.
    #[inline(always)]
    fn characteristic_length(self, outside: &OutsideAir) -> f64 {
        match self {
            Self::Vertical(_) => outside.length,
            Self::Horizontal(_) | Self::Wind => outside.diameter,
        }
    }

    /// The film of a known coefficient in W/(m² K), with the numbers that describe it.
    #[inline(always)]
    pub fn described(self, coefficient: f64, surface_temperature: f64, outside: &OutsideAir) -> FilmState {
        let film_temperature = 0.5 * (surface_temperature + outside.air_temperature);
        let air = dry_air(film_temperature, outside.pressure);
        let (viscosity, prandtl) = (air.kinematic_viscosity(), air.prandtl());
        let length = self.characteristic_length(outside);
        let strength = match self {
            Self::Wind => outside.wind_speed * length / viscosity,
            Self::Horizontal(_) | Self::Vertical(_) => {
                // A vertical cylinder's Nusselt number has a pole where nothing moves; the heat, which
                // is what counts, vanishes there, so the pole is left out.
                let difference = (surface_temperature - outside.air_temperature).abs().max(1e-9);
                FREE_FALL / film_temperature * difference * length * length * length / (viscosity * viscosity)
            }
        };
        FilmState {
            coefficient,
            nusselt: coefficient * length / air.conductivity,
            rayleigh: strength * prandtl,
            prandtl,
            film_temperature,
            conductivity: air.conductivity,
        }
    }

    /// The film at a surface temperature in K. The air's expansion is that of an ideal gas.
    pub fn state(self, surface_temperature: f64, outside: &OutsideAir) -> FilmState {
        let still = self.described(f64::NAN, surface_temperature, outside);
        let FilmState { rayleigh, prandtl, conductivity, .. } = still;
        let difference = (surface_temperature - outside.air_temperature).abs();
        let length = self.characteristic_length(outside);
        let curvature = || popiel_factor(rayleigh / prandtl, prandtl, length / outside.diameter);
        let by_number = |nusselt: f64| nusselt * conductivity / length;
        let coefficient = match self {
            Self::Horizontal(HorizontalCylinder::ChurchillChu) => by_number(churchill_chu_cylinder(rayleigh, prandtl)),
            Self::Horizontal(HorizontalCylinder::Morgan) => by_number(morgan_cylinder(rayleigh)),
            Self::Horizontal(HorizontalCylinder::Iso12241) => iso_12241_horizontal(difference, outside.diameter),
            Self::Vertical(VerticalCylinder::PopielPlate) => by_number(churchill_chu_plate(rayleigh, prandtl) * curvature()),
            Self::Vertical(VerticalCylinder::PopielLaminarPlate) => by_number(churchill_chu_laminar_plate(rayleigh, prandtl) * curvature()),
            Self::Vertical(VerticalCylinder::LeFevreEde) => by_number(le_fevre_ede(rayleigh, prandtl, length / outside.diameter)),
            Self::Vertical(VerticalCylinder::Iso12241) => iso_12241_vertical(difference, outside.diameter),
            Self::Wind => by_number(churchill_bernstein(rayleigh / prandtl, prandtl)),
        };
        // Beyond the air's properties even a form that does without them has nothing to say.
        let coefficient = if conductivity.is_nan() { f64::NAN } else { coefficient };
        FilmState { coefficient, nusselt: coefficient * length / conductivity, ..still }
    }

    /// The range for which the correlation is published, of [`FilmState::rayleigh`] first.
    pub const fn limits(self) -> &'static [Limit] {
        match self {
            Self::Horizontal(correlation) => correlation.limits(),
            Self::Vertical(correlation) => correlation.limits(),
            Self::Wind => &CHURCHILL_BERNSTEIN_LIMITS,
        }
    }

    /// Expected relative accuracy of the film coefficient.
    pub const fn scatter(self) -> f64 {
        match self {
            Self::Horizontal(correlation) => correlation.scatter(),
            Self::Vertical(correlation) => correlation.scatter(),
            Self::Wind => 0.20,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::air::properties::STANDARD_ATMOSPHERE;
    use crate::convection::radiation::radiated;
    use core::f64::consts::PI;
    use std::vec::Vec;

    fn close(got: f64, wanted: f64, tolerance: f64, what: &str) {
        assert!((got / wanted - 1.0).abs() <= tolerance, "{what}: {got} is not {wanted} to {tolerance}");
    }

    #[test]
    fn bare_pipes_agree_with_the_reference_table() {
        let (mut horizontal, mut vertical) = (0, 0);
        for line in include_str!("../../../../tests/reference/heat/pipe_surface_loss.csv").lines().skip(1) {
            let cell: Vec<&str> = line.split(',').collect();
            let number = |i: usize| cell[i].parse::<f64>().unwrap();
            let upright = cell[0] == "vertical";
            let surface = number(3) + 273.15;
            let outside = OutsideAir {
                diameter: number(2) * 1e-3,
                length: if upright { number(1) } else { 1.0 },
                air_temperature: number(4) + 273.15,
                pressure: STANDARD_ATMOSPHERE,
                wind_speed: 0.0,
            };
            let (named, others): (OutsideFilm, &[(OutsideFilm, usize)]) = if upright {
                vertical += 1;
                (
                    OutsideFilm::Vertical(VerticalCylinder::PopielPlate),
                    &[
                        (OutsideFilm::Vertical(VerticalCylinder::LeFevreEde), 15),
                        (OutsideFilm::Vertical(VerticalCylinder::PopielLaminarPlate), 16),
                    ],
                )
            } else {
                horizontal += 1;
                (OutsideFilm::default(), &[(OutsideFilm::Horizontal(HorizontalCylinder::Morgan), 14)])
            };
            let film = named.state(surface, &outside);
            close(film.rayleigh, number(5), 2e-5, "Rayleigh");
            close(film.nusselt, number(6), 1e-5, "Nusselt");
            close(film.coefficient, number(7), 1e-5, "coefficient");
            let convection = PI * outside.diameter * film.coefficient * (surface - outside.air_temperature);
            let black = PI * outside.diameter * radiated(1.0, surface, outside.air_temperature);
            close(convection, number(8), 1e-5, "convection");
            close(black, number(9), 1e-5, "radiation");
            for (emissivity, column) in [(0.90, 10), (0.60, 11), (0.04, 12)] {
                close(convection + emissivity * black, number(column), 1e-5, "total");
            }
            for &(other, column) in others {
                close(other.state(surface, &outside).nusselt, number(column), 1e-5, "another correlation");
            }
            let iso = if upright {
                OutsideFilm::Vertical(VerticalCylinder::Iso12241)
            } else {
                OutsideFilm::Horizontal(HorizontalCylinder::Iso12241)
            };
            close(iso.state(surface, &outside).coefficient, number(13), 1e-5, "ISO 12241 form");
        }
        assert_eq!((horizontal, vertical), (60, 18));
    }

    #[test]
    fn textbook_examples_are_met_with_the_properties_they_print() {
        // Cengel, Example 9-1: Ra 1.869e6 and Pr 0.7241 give Nu 17.40.
        close(churchill_chu_cylinder(1.869e6, 0.7241), 17.4, 1e-3, "Cengel 9-1");
        // Incropera & DeWitt, Example 9.4 prints 23.3 where its own figures give 23.09.
        close(churchill_chu_cylinder(5.073e6, 0.697), 23.3, 0.01, "Incropera 9.4");
    }

    #[test]
    fn impossible_states_give_no_number() {
        let outside = OutsideAir { diameter: 0.022, length: 2.0, air_temperature: 293.15, pressure: STANDARD_ATMOSPHERE, wind_speed: 1.0 };
        let every = [
            OutsideFilm::Horizontal(HorizontalCylinder::ChurchillChu),
            OutsideFilm::Horizontal(HorizontalCylinder::Morgan),
            OutsideFilm::Horizontal(HorizontalCylinder::Iso12241),
            OutsideFilm::Vertical(VerticalCylinder::PopielPlate),
            OutsideFilm::Vertical(VerticalCylinder::PopielLaminarPlate),
            OutsideFilm::Vertical(VerticalCylinder::LeFevreEde),
            OutsideFilm::Vertical(VerticalCylinder::Iso12241),
            OutsideFilm::Wind,
        ];
        for film in every {
            assert!(film.state(340.0, &outside).coefficient > 0.0);
            assert!(film.state(f64::NAN, &outside).coefficient.is_nan());
            assert!(film.state(340.0, &OutsideAir { diameter: -0.022, ..outside }).coefficient.is_nan(), "{film:?}");
            assert!(film.state(700.0, &outside).coefficient.is_nan());
            assert!(!film.limits().is_empty() && film.scatter() > 0.0);
        }
        assert!(OutsideFilm::Wind.state(340.0, &OutsideAir { wind_speed: -1.0, ..outside }).coefficient.is_nan());
    }
}
