//! Materials of a heating system: metals, insulation, surface finishes and tubes, by name.
//!
//! Every row says where its numbers come from. A name that is not in a table is answered with the
//! nearest one that is.

mod calculation;
mod name;
mod properties;
pub(crate) use name::find;
mod solid;
mod surface;
mod tube;

pub use calculation::{TubeRun, TubeRunInput, TubeRunResult};
pub use properties::{Material, MaterialProperties, MaterialPropertiesInput, MaterialPropertiesResult};
pub use solid::{ALUMINIUM, CARBON_STEEL, COPPER, INSULATIONS, Insulation, METALS, Metal, insulation, metal};
pub use surface::{SURFACES, Surface, surface};
pub use tube::{TUBE_FAMILIES, Tube, TubeFamily, TubeSize, tube, tube_names};
