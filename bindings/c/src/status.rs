//! What became of a call.

use core_library::{Error, ErrorKind};

/// What became of a call. A number is never given to another meaning.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum fw_status {
    /// Done; the outputs are written.
    FW_OK = 0,

    /// A pointer that is needed is NULL.
    FW_NULL_POINTER = 1,
    /// A pointer is not aligned for what it points to.
    FW_MISALIGNED = 2,
    /// A text is not UTF-8.
    FW_NOT_UTF8 = 3,
    /// A count is not what the calculation needs, or an array cannot be that large.
    FW_WRONG_COUNT = 4,
    /// A stride is smaller than its element, or not a multiple of the size of a double.
    FW_BAD_STRIDE = 5,
    /// An output lies over an input of another row, over another output, or over the row status.
    FW_OVERLAP = 6,
    /// The context belongs to another calculation.
    FW_WRONG_CONTEXT = 7,
    /// A defect of the library, caught; please report it with the message.
    FW_PANIC = 8,

    /// A needed value was not given (it is not a number).
    FW_MISSING = 101,
    /// A value is infinite.
    FW_NOT_FINITE = 102,
    /// A value lies outside the range of its field.
    FW_OUT_OF_RANGE = 103,
    /// A text cannot be read as a quantity.
    FW_UNREADABLE = 104,
    /// A bare number where a unit is needed.
    FW_UNIT_MISSING = 105,
    /// A unit is not known.
    FW_UNKNOWN_UNIT = 106,
    /// A unit measures something else.
    FW_WRONG_DIMENSION = 107,
    /// A value stands on another basis (gauge for absolute, gross for net).
    FW_WRONG_BASIS = 108,
    /// A name is not known.
    FW_UNKNOWN_NAME = 109,
    /// A setting, or a text record, has a value that is not offered or has the wrong form.
    FW_BAD_SETTING = 110,
    /// The values are impossible together: a rule of the calculation refused them.
    FW_REFUSED = 111,
    /// No answer exists.
    FW_NO_SOLUTION = 112,
    /// Refused for a reason that this version of the interface has no number for; see the message.
    FW_OTHER_REFUSAL = 199,
}

use fw_status::*;

/// Why a call failed.
pub(crate) enum Failure {
    /// The call itself is wrong.
    Call(fw_status, String),
    /// The library refused what it was given.
    Refused(Error),
}

impl Failure {
    pub(crate) fn call(status: fw_status, message: impl Into<String>) -> Self {
        Self::Call(status, message.into())
    }

    pub(crate) fn status(&self) -> fw_status {
        match self {
            Self::Call(status, _) => *status,
            Self::Refused(error) => match error.kind() {
                ErrorKind::Missing => FW_MISSING,
                ErrorKind::NotFinite => FW_NOT_FINITE,
                ErrorKind::OutOfRange => FW_OUT_OF_RANGE,
                ErrorKind::Unreadable => FW_UNREADABLE,
                ErrorKind::UnitMissing => FW_UNIT_MISSING,
                ErrorKind::UnknownUnit => FW_UNKNOWN_UNIT,
                ErrorKind::WrongDimension => FW_WRONG_DIMENSION,
                ErrorKind::WrongBasis => FW_WRONG_BASIS,
                ErrorKind::UnknownName => FW_UNKNOWN_NAME,
                ErrorKind::BadSetting => FW_BAD_SETTING,
                ErrorKind::Refused => FW_REFUSED,
                ErrorKind::NoSolution => FW_NO_SOLUTION,
                _ => FW_OTHER_REFUSAL,
            },
        }
    }
}

impl From<Error> for Failure {
    fn from(error: Error) -> Self {
        Self::Refused(error)
    }
}
