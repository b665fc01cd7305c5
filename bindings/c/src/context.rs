//! Settings fixed beforehand, and the one static face of every calculation.

use crate::guard::{guarded, text, usable};
use crate::status::{Failure, fw_status, fw_status::*};
use columns::{Columns, columns};
use core_library::Error;
use core_library::catalogue::Prepared;
use core_library::node::Node;
use std::ffi::c_char;
use std::sync::{Arc, OnceLock};

/// A calculation with its settings fixed: a fuel, a tube, a circuit. It is never changed after it is
/// made, so any number of threads may use one at once.
pub struct fw_context {
    columns: Arc<Columns>,
}

impl fw_context {
    pub(crate) fn new(calculation: &str, settings: &Node) -> Result<Self, Error> {
        Ok(Self { columns: Arc::new(columns(calculation, settings)?) })
    }
    pub(crate) fn columns(&self) -> &Arc<Columns> {
        &self.columns
    }
    #[inline(always)]
    pub(crate) fn prepared(&self) -> &dyn Prepared {
        self.columns.scalar()
    }
    pub(crate) fn name(&self) -> &'static str {
        self.columns.entry().info().name
    }
}

/// A context given by C.
///
/// # Safety
/// `context` is NULL or a context that is not freed while the result is used.
#[inline(always)]
pub(crate) unsafe fn given<'a>(context: *const fw_context) -> Result<&'a fw_context, Failure> {
    usable(context, "context")?;
    // SAFETY: not NULL, aligned; the rest is what the caller promises.
    Ok(unsafe { &*context })
}

/// A calculation as its functions name it, with its context at default settings.
pub(crate) struct Face {
    name: &'static str,
    defaults: OnceLock<Result<fw_context, Error>>,
}

impl Face {
    pub(crate) const fn new(name: &'static str) -> Self {
        Self { name, defaults: OnceLock::new() }
    }

    pub(crate) fn name(&self) -> &'static str {
        self.name
    }

    /// The context to work with: the one given, or default settings where none is.
    ///
    /// # Safety
    /// As [`given`].
    #[inline(always)]
    pub(crate) unsafe fn context(&self, context: *const fw_context) -> Result<&fw_context, Failure> {
        if context.is_null() {
            return match self.defaults.get_or_init(|| fw_context::new(self.name, &Node::Null)) {
                Ok(context) => Ok(context),
                Err(error) => Err(error.clone().into()),
            };
        }
        // SAFETY: what the caller promises.
        let context = unsafe { given(context) }?;
        if context.name() == self.name { Ok(context) } else { Err(self.wrong(context)) }
    }

    #[cold]
    fn wrong(&self, context: &fw_context) -> Failure {
        Failure::call(FW_WRONG_CONTEXT, format!("{} was called with a context of {}", self.name, context.name()))
    }
}

/// Fixes the settings of a calculation.
///
/// `calculation` is its name in the catalogue. `settings_json` is a JSON object with the settings by
/// name, values with their units in text, for instance {"fuel": "G20"}; NULL takes every default.
/// Free the context with fw_context_free.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_context_new(
    calculation: *const c_char,
    settings_json: *const c_char,
    context: *mut *mut fw_context,
) -> fw_status {
    guarded(|| {
        usable(context, "context")?;
        // SAFETY: by the rules of the header both texts end with a NUL.
        let name = unsafe { text(calculation, "calculation") }?;
        let settings = if settings_json.is_null() {
            Node::Null
        } else {
            // SAFETY: as above.
            Node::from_json(unsafe { text(settings_json, "settings_json") }?)?
        };
        let made = Box::new(fw_context::new(name, &settings)?);
        // SAFETY: not NULL, aligned, and by the rules of the header writable.
        unsafe { context.write(Box::into_raw(made)) };
        Ok(())
    })
}

/// Frees a context; NULL is allowed. No other thread may be using it.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn fw_context_free(context: *mut fw_context) {
    let _: fw_status = guarded(|| {
        if !context.is_null() {
            // SAFETY: by the rules of the header it is a context from `fw_context_new` that was not freed before.
            drop(unsafe { Box::from_raw(context) });
        }
        Ok(())
    });
}
