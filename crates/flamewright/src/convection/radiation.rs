//! Long-wave radiation between a small grey surface and the room around it.

/// Stefan-Boltzmann constant in W/(m² K⁴) (CODATA 2018, exact since the SI of 2019, rounded).
pub const STEFAN_BOLTZMANN: f64 = 5.670374419e-8;

/// Net heat given off in W/m² by a grey surface to surroundings much larger than itself.
///
/// Temperatures in K, emissivity 0 to 1. Negative where the surroundings are the warmer.
#[inline(always)]
pub fn radiated(emissivity: f64, surface_temperature: f64, radiant_temperature: f64) -> f64 {
    let surface = surface_temperature * surface_temperature;
    let room = radiant_temperature * radiant_temperature;
    emissivity * STEFAN_BOLTZMANN * (surface * surface - room * room)
}

/// The same per kelvin between the two, in W/(m² K): the factor taken out of the difference of
/// fourth powers, so that equal temperatures are no special case.
#[inline(always)]
pub fn radiation_coefficient(emissivity: f64, surface_temperature: f64, radiant_temperature: f64) -> f64 {
    emissivity
        * STEFAN_BOLTZMANN
        * (surface_temperature + radiant_temperature)
        * (surface_temperature * surface_temperature + radiant_temperature * radiant_temperature)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_forms_agree_and_vanish_at_equal_temperatures() {
        let coefficient = radiation_coefficient(0.85, 438.0, 296.0);
        let flux = radiated(0.85, 438.0, 296.0);
        assert!((coefficient * 142.0 / flux - 1.0).abs() < 1e-14);
        assert_eq!(radiated(0.9, 300.0, 300.0), 0.0);
        // A black body at 300 K: sigma T^4 = 459.3 W/m2.
        assert!((radiated(1.0, 300.0, 0.0) - 459.300_327_939).abs() < 1e-6);
    }
}
