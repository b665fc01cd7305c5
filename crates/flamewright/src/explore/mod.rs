//! Asking a calculation the other way round: which input gives a wanted output, and how an output
//! varies over one or two inputs. Inverse questions of the trade fall out of it:
//!
//! ```
//! # #[cfg(feature = "text")]
//! # fn main() -> Result<(), flamewright::Error> {
//! use flamewright::catalogue::{Bare, calculation, evaluate, read_input, split};
//! use flamewright::explore::goal_seek;
//! use flamewright::node::Node;
//!
//! /// The input `vary`, between `low` and `high`, for which `of` is `wanted`; everything as text, the answer in SI.
//! fn sought(name: &str, given: &str, vary: &str, (low, high): (&str, &str), of: &str, wanted: &str) -> Result<f64, flamewright::Error> {
//!     let entry = calculation(name)?;
//!     let (settings, fields) = split(entry, &Node::from_toml(given)?)?;
//!     let input = read_input(entry.inputs(), &fields, Bare::Refused)?;
//!     let (_, varied) = flamewright::record::find(entry.inputs(), vary)?;
//!     let (_, result) = flamewright::record::find(entry.outputs(), of)?;
//!     let prepared = entry.prepare(&settings)?;
//!     Ok(goal_seek(&*prepared, &input, vary, varied.read(low)?, varied.read(high)?, of, result.read(wanted)?)?.value)
//! }
//!
//! // How thick must the insulation be for a pipe to lose 9 W/m?
//! let pipe = r#"
//!     outside_diameter = "22 mm"
//!     wall_thickness = "0.9 mm"
//!     wall_conductivity = "385 W/(m K)"
//!     insulation_conductivity = "0.04 W/(m K)"
//!     emissivity = 0.9
//!     water_temperature = "70 degC"
//!     air_temperature = "15 degC"
//! "#;
//! let thickness = sought("pipe_heat_loss", pipe, "insulation_thickness", ("0 mm", "100 mm"), "heat_loss_per_length", "9 W/m")?;
//! assert!((thickness - 0.0348).abs() < 1e-4);
//!
//! // Down to which oxygen must the burner be set for 94 % net at this flue temperature?
//! let flue = r#"
//!     fuel = "G20"
//!     carbon_monoxide_dry = "40 ppm"
//!     flue_temperature = "150 degC"
//!     air_temperature = "19 degC"
//! "#;
//! let oxygen = sought("flue_analysis", flue, "oxygen_dry", ("1 %", "12 %"), "efficiency_net", "94 %")?;
//! assert!((oxygen - 0.0289).abs() < 1e-4);
//!
//! // Which bore carries gas for 30 kW over 12 m with a drop of 1 mbar?
//! let pipe = r#"
//!     heat_input_gross = "30 kW"
//!     length = "12 m"
//!     roughness = "0.0015 mm"
//!     inlet_pressure = "20 mbar"
//! "#;
//! let bore = sought("gas_pipe_drop", pipe, "bore", ("10 mm", "60 mm"), "pressure_drop_high", "1 mbar")?;
//! assert!((bore - 0.0176).abs() < 1e-4);
//! // None is said to be none, with how far the output runs.
//! let refused = sought("gas_pipe_drop", pipe, "bore", ("20 mm", "60 mm"), "pressure_drop_high", "1 mbar").unwrap_err();
//! assert!(refused.to_string().contains("runs from"));
//!
//! // How long must a test at the meter be for 1 %? This has a calculation of its own.
//! let test = r#"
//!     gas_rate = "3 m3/h"
//!     meter_resolution = "1 L"
//!     wanted_uncertainty = "1 %"
//! "#;
//! let time = evaluate("gas_rate_test_time", &Node::from_toml(test)?, Bare::Refused)?.get("time_for_uncertainty");
//! assert!((time.unwrap() - 53.4).abs() < 0.1);
//! # Ok(()) }
//! # #[cfg(not(feature = "text"))] fn main() {}
//! ```

mod goal_seek;
mod sweep;

pub use goal_seek::{Goal, goal_seek};
pub use sweep::{Axis, Sweep, sweep};
