//! Shapes that go out, to a plotter, a shop, on paper at full size; and shapes that come in.

mod full_size;
mod out;
mod taken;
