//! Every calculation of the catalogue over columns, with the numbers of the single call bit for bit.
//!
//! One generic loop takes rows in blocks of eight, so that the compiler turns a straight-line
//! calculation into vector instructions. Where the processor has AVX2 the same loop compiled for
//! it is chosen at run time; fused multiply-add is never used, so both give the same bits.
//!
//! ```
//! use flamewright::node::Node;
//! use flamewright_columns::{Column, columns};
//!
//! let water = columns("liquid_water", &Node::Null)?;
//! let temperatures = [333.15, 350.0, -1.0];
//! let inputs = [Column::Values(&temperatures), Column::Constant(2e5)];
//! let table = water.evaluate(&inputs, 3)?;
//! assert!(table.column("density").unwrap()[0] > 983.0);
//! assert_eq!(table.refused(), 1);
//! assert_eq!(water.explain(&inputs, 2).unwrap_err().field(), "temperature");
//! # Ok::<(), flamewright::Error>(())
//! ```

#[cfg(feature = "arrow")]
pub mod arrow;
mod kernel;
mod status;
mod table;

pub use kernel::{CATALOGUE, Columns, ColumnsEntry, columns};
pub use status::Status;
pub use table::Table;

/// One input over all rows, in SI units.
#[derive(Clone, Copy, Debug)]
pub enum Column<'a> {
    /// The same value in every row.
    Constant(f64),
    /// A value a row; not-a-number stands for a missing one.
    Values(&'a [f64]),
}
