//! The core on bare metal: its own allocator, its own panic handler, no standard library.
#![no_std]

use core::alloc::{GlobalAlloc, Layout};
use core::sync::atomic::{AtomicUsize, Ordering};
use flamewright::catalogue::{Bare, CATALOGUE, evaluate};
use flamewright::node::Node;

const SIZE: usize = 1 << 20;

/// Gives out a fixed piece of memory and takes nothing back.
struct Bump {
    memory: core::cell::UnsafeCell<[u8; SIZE]>,
    used: AtomicUsize,
}

// SAFETY: every byte is given out once, by an atomic addition.
unsafe impl Sync for Bump {}

// SAFETY: what is given out lies within the memory, is aligned as asked, and is given out once.
unsafe impl GlobalAlloc for Bump {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        let start = self.memory.get() as usize;
        let room = layout.size() + layout.align();
        let at = self.used.fetch_add(room, Ordering::Relaxed);
        if at.saturating_add(room) > SIZE {
            return core::ptr::null_mut();
        }
        (start + at).next_multiple_of(layout.align()) as *mut u8
    }
    unsafe fn dealloc(&self, _: *mut u8, _: Layout) {}
}

#[global_allocator]
static MEMORY: Bump = Bump { memory: core::cell::UnsafeCell::new([0; SIZE]), used: AtomicUsize::new(0) };

#[panic_handler]
fn panic(_: &core::panic::PanicInfo<'_>) -> ! {
    loop {}
}

/// How many calculations there are, and the density of water at 60 °C through the catalogue.
#[unsafe(no_mangle)]
pub extern "C" fn bare_density(calculations: &mut usize) -> f64 {
    *calculations = CATALOGUE.len();
    let found = evaluate("liquid_water", &Node::from([("temperature", "60 degC")]), Bare::Refused);
    found.ok().and_then(|outcome| outcome.get("density")).unwrap_or(f64::NAN)
}
