//! Following a plant takes memory once: as much for an hour as for a week, for one burn as for hundreds.

use flamewright::catalogue::{Bare, calculation, read_input};
use flamewright::node::Node;
use std::alloc::{GlobalAlloc, Layout, System};
use std::cell::Cell;

thread_local! {
    static TAKEN: Cell<usize> = const { Cell::new(0) };
}

/// The system's allocator, counting what this thread takes.
struct Counting;

// SAFETY: every call goes to the system's allocator unchanged.
unsafe impl GlobalAlloc for Counting {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        TAKEN.with(|taken| taken.set(taken.get() + 1));
        // SAFETY: as the caller's.
        unsafe { System.alloc(layout) }
    }
    unsafe fn dealloc(&self, pointer: *mut u8, layout: Layout) {
        // SAFETY: as the caller's.
        unsafe { System.dealloc(pointer, layout) }
    }
    unsafe fn realloc(&self, pointer: *mut u8, layout: Layout, size: usize) -> *mut u8 {
        TAKEN.with(|taken| taken.set(taken.get() + 1));
        // SAFETY: as the caller's.
        unsafe { System.realloc(pointer, layout, size) }
    }
}

#[global_allocator]
static ALLOCATOR: Counting = Counting;

/// Pieces of memory that one call takes, and the value of one result.
fn taken(name: &str, changes: &[(&str, &str)], result: &str) -> (usize, f64) {
    let prepared = calculation(name).unwrap().prepare(&Node::Table(Vec::new())).unwrap();
    let entry = prepared.entry();
    let plant = [
        ("metal_mass", "72 kg"),
        ("water_content", "15 L"),
        ("casing_loss", "6 W/K"),
        ("pump_flow", "0.15 kg/s"),
        ("flow_length", "8 m"),
        ("return_length", "8 m"),
        ("pipe_heat_capacity", "1500 J/(m·K)"),
        ("pipe_loss", "0.75 W/(m·K)"),
        ("emitter_output", "1500 W"),
        ("emitter_heat_capacity", "45 kJ/K"),
        ("block_temperature", "75 degC"),
    ];
    let given: Vec<_> = plant.iter().chain(changes).map(|(key, value)| ((*key).to_owned(), Node::from(*value))).collect();
    let input = read_input(entry.inputs(), &Node::Table(given), Bare::Refused).unwrap();
    let mut output = vec![0.0; entry.outputs().len()];
    let before = TAKEN.with(Cell::get);
    prepared.compute(&input, &mut output);
    let count = TAKEN.with(Cell::get) - before;
    (count, output[entry.outputs().iter().position(|field| field.name == result).unwrap()])
}

#[test]
fn a_longer_run_takes_no_more_memory() {
    let cool = |target: &str| taken("cool_down", &[("target_temperature", target)], "time");
    let (short, long) = (cool("74 degC"), cool("20.01 degC"));
    assert!(long.1 > 50.0 * short.1, "{short:?} {long:?}");
    assert!(short.0 > 0 && short.0 == long.0, "{short:?} {long:?}");
    let cycle = |room: &[(&str, &str)]| {
        let burner = [("burner_output", "12 kW"), ("cut_out_temperature", "80 degC"), ("cut_in_temperature", "70 degC")];
        let changes: Vec<_> = burner.iter().chain(room).copied().collect();
        taken("circuit_cycling", &changes, "settling_count")
    };
    // In a room that goes on warming no cycle is like the one before.
    let (few, many) = (cycle(&[]), cycle(&[("room_heat_capacity", "1e6 kJ/K"), ("room_loss", "20 W/K")]));
    assert!(many.1 > 20.0 * few.1, "{few:?} {many:?}");
    assert!(few.0 == many.0, "{few:?} {many:?}");
}
