//! Where the values of one input field come from, and their conversion to SI as they are read.

use super::options::{Options, Units};
use arrow_array::types::{
    Decimal128Type, Float32Type, Float64Type, Int8Type, Int16Type, Int32Type, Int64Type, UInt8Type, UInt16Type, UInt32Type, UInt64Type,
};
use arrow_array::{Array, RecordBatch, cast::AsArray};
use arrow_buffer::NullBuffer;
use arrow_schema::{DataType, Schema};
use flamewright::Error;
use flamewright::record::Field;

/// One input field over all rows.
pub(super) enum Source {
    /// The same SI value everywhere; not-a-number for a field left out.
    Constant(f64),
    /// A column, by its place, with its factor and offset to SI; `None` where it is in SI already.
    Column { place: usize, scale: Option<(f64, f64)> },
}

impl Source {
    /// The source of `field`, and the unit that the caller stated for its column.
    pub(super) fn of<'a>(field: &Field, schema: &Schema, options: &'a Options) -> Result<(Self, Option<&'a str>), Error> {
        let constant = options.constants.iter().find(|(name, _)| name == field.name).map(|&(_, si)| si);
        let mapped = options.columns.iter().find(|(name, _)| name == field.name).map(|(_, column)| column.as_str());
        let named = mapped.unwrap_or(field.name);
        let mut places = schema.fields().iter().enumerate().filter(|(_, column)| column.name() == named);
        let (place, column) = match (places.next(), constant) {
            (Some(_), Some(_)) => {
                return Err(Error::bad_setting(
                    field.name,
                    named,
                    "there is a column of this name and a constant too; leave one of them out",
                ));
            }
            (Some(found), None) => found,
            (None, _) if mapped.is_some() => {
                return Err(Error::unknown_name(
                    &format!("column for {}", field.name),
                    named,
                    schema.fields().iter().map(|c| c.name().as_str()),
                ));
            }
            (None, Some(si)) => return Ok((Self::Constant(si), None)),
            (None, None) if field.default.is_nan() && field.absent.is_empty() => return Err(Error::for_field(field, f64::NAN)),
            (None, None) => return Ok((Self::Constant(field.default), None)),
        };
        if places.next().is_some() {
            return Err(Error::bad_setting(field.name, named, "several columns have this name"));
        }
        if !is_number(column.data_type()) {
            let why = "a column of numbers is needed: floats, whole numbers or Decimal128; decode or cast it first";
            return Err(Error::bad_setting(field.name, &column.data_type().to_string(), why));
        }
        let said = |key: &str| column.metadata().get(key).map(String::as_str);
        field.accepts(said("calculation").and_then(|_| said("quantity")).unwrap_or_default(), said("basis").unwrap_or_default())?;
        let stated = match &options.units {
            Units::Stated(units) => units.iter().find(|(name, _)| name == field.name).map(|(_, unit)| unit.as_str()),
            Units::Si => None,
        };
        let scale = match (stated, said("unit").or(said("units"))) {
            (Some(stated), Some(said)) if field.scale(stated)? != field.scale(said)? => {
                let why = format!("the column says of itself that it is in \"{said}\"");
                return Err(Error::bad_setting(field.name, stated, &why));
            }
            (Some(unit), _) | (None, Some(unit)) => field.scale(unit)?,
            (None, None) if options.units == Units::Si => (1.0, 0.0),
            (None, None) => field.scale("")?,
        };
        Ok((Self::Column { place, scale: (scale != (1.0, 0.0)).then_some(scale) }, stated))
    }

    /// The source over the rows of `batch`.
    pub(super) fn over<'a>(&self, batch: &'a RecordBatch) -> Result<Values<'a>, Error> {
        let (place, scale) = match *self {
            Self::Constant(si) => return Ok(Values::Constant(si)),
            Self::Column { place, scale } => (place, scale),
        };
        let array =
            batch.columns().get(place).ok_or_else(|| Error::bad_setting("table", "", "a batch has fewer columns than its schema"))?;
        let numbers = Numbers::of(array).ok_or_else(|| Error::bad_setting("table", "", "a batch has other types than its schema"))?;
        let nulls = array.nulls().filter(|nulls| nulls.null_count() > 0);
        Ok(match (numbers, nulls, scale) {
            (Numbers::Float64(values), None, None) => Values::Si(values),
            (numbers, nulls, scale) => Values::Converted { numbers, nulls, scale },
        })
    }
}

/// The values of one field over a batch.
pub(super) enum Values<'a> {
    Constant(f64),
    /// Read where they lie.
    Si(&'a [f64]),
    /// Read, and converted block by block.
    Converted {
        numbers: Numbers<'a>,
        nulls: Option<&'a NullBuffer>,
        scale: Option<(f64, f64)>,
    },
}

impl Values<'_> {
    /// The SI values from row `first` on, not-a-number for null; for converted values only.
    pub(super) fn fill(&self, first: usize, block: &mut [f64]) {
        if let Self::Converted { numbers, nulls, scale } = self {
            numbers.read(first, block, *scale);
            if let Some(nulls) = nulls {
                for (row, value) in block.iter_mut().enumerate() {
                    *value = if nulls.is_null(first + row) { f64::NAN } else { *value };
                }
            }
        }
    }
}

macro_rules! numbers {
    ($($name:ident($type:ty) = $arrow:ident),* $(,)?) => {
        /// A column of numbers of any width.
        pub(super) enum Numbers<'a> {
            $($name(&'a [$type]),)*
            /// Whole numbers and the power of ten they are to be divided by.
            Decimal(&'a [i128], f64),
            /// Nothing but nulls.
            Nothing,
        }

        fn is_number(data_type: &DataType) -> bool {
            matches!(data_type, $(DataType::$name)|* | DataType::Decimal128(_, 0..) | DataType::Null)
        }

        impl<'a> Numbers<'a> {
            fn of(array: &'a dyn Array) -> Option<Self> {
                Some(match array.data_type() {
                    $(DataType::$name => Self::$name(array.as_primitive::<$arrow>().values()),)*
                    // The text is read rather than the power taken, because that rounds once.
                    DataType::Decimal128(_, scale @ 0..) =>
                        Self::Decimal(array.as_primitive::<Decimal128Type>().values(), format!("1e{scale}").parse().ok()?),
                    DataType::Null => Self::Nothing,
                    _ => return None,
                })
            }

            fn read(&self, first: usize, block: &mut [f64], scale: Option<(f64, f64)>) {
                match self {
                    $(Self::$name(values) => scaled(&values[first..], block, scale, |value| value as f64),)*
                    Self::Decimal(values, divisor) => scaled(&values[first..], block, scale, |value| value as f64 / divisor),
                    Self::Nothing => block.fill(f64::NAN),
                }
            }
        }
    };
}
numbers! {
    Float64(f64) = Float64Type, Float32(f32) = Float32Type,
    Int8(i8) = Int8Type, Int16(i16) = Int16Type, Int32(i32) = Int32Type, Int64(i64) = Int64Type,
    UInt8(u8) = UInt8Type, UInt16(u16) = UInt16Type, UInt32(u32) = UInt32Type, UInt64(u64) = UInt64Type,
}

#[inline(always)]
fn scaled<T: Copy>(values: &[T], block: &mut [f64], scale: Option<(f64, f64)>, number: impl Fn(T) -> f64) {
    match scale {
        // As a text with its unit is read, so that both give the same bits.
        Some((factor, offset)) => block.iter_mut().zip(values).for_each(|(si, value)| *si = number(*value) * factor + offset),
        None => block.iter_mut().zip(values).for_each(|(si, value)| *si = number(*value)),
    }
}
