//! The whole job: a visit record in, an assessment out.
//!
//! A visit record is a tree of plain values (TOML or JSON). Its parts are the calculations of the
//! catalogue, by name, each with its input fields and settings:
//!
//! ```toml
//! title = "…"
//! date = "2026-11-20"
//!
//! [common]                       # given once, used by every part that has such a field or setting
//! fuel = "G20"
//! barometer = "1004 mbar"
//!
//! [instruments.analyser]         # what each instrument says of its own accuracy
//! calibrated = "2026-03-02"
//! due = "2027-03-02"
//! oxygen_dry = { accuracy = "0.3 %", resolution = "0.1 %" }
//!
//! [as_found.flue_analysis]       # also: [as_left.…] and, for what is done once, [checks.…]
//! instruments = ["analyser"]
//! oxygen_dry = "6.8 %"
//! ```
//!
//! A value is text with its unit, a table `{ value, accuracy, of_reading, resolution, … }`, a table
//! of repeated `readings`, or a reference to another part's result (`"= gas_rate.heat_input_net"`).
//! All parts form one [`Chain`](crate::uncertainty::Chain), so results that share a reading or an
//! instrument are known to be correlated.

mod assess;
mod findings;
mod html;
mod record;
mod report;
mod schema;
mod value;

pub use assess::{Assessment, Change, Judged, PartResult, ResultValue, assess};
pub use findings::{Finding, Severity};
pub use record::{Defect, Instrument, Part, Stage, Visit};
pub use schema::{assessment_schema, record_schema};
pub use value::Given;
