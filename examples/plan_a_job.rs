//! Plans a job from a text and prints what the top weighs and which cuts make it.
//!
//! Run it with `cargo run --example plan_a_job`.

use kerfwright::plan::Plan;
use kerfwright::words::Writer;

const JOB: &str = r#"
[stone]
kind = "granite"
thickness = 20

[slab]
rectangle = [1400, 620]

[top]
rectangle = [1200, 560]
round = { 2 = 60 }
"#;

fn main() {
    let (job, _) = match kerfwright::job::read(JOB) {
        Ok(read) => read,
        Err(faults) => {
            for fault in faults {
                eprintln!("{}: {} ({})", fault.key, fault.message, fault.hint);
            }
            return;
        }
    };
    match Plan::of(&job) {
        Ok(plan) => {
            println!("finished top: {:.1} kg", plan.top.mass.likely.kg());
            for cut in &plan.cuts {
                println!("cut {}: {:?} at {}", cut.number, cut.kind, cut.edge);
            }
            for stop in &plan.stops {
                println!("STOP: {}", Writer::default().say(&stop.message));
            }
        }
        Err(no_fit) => {
            for reason in &no_fit.reasons {
                println!("does not fit: {}", Writer::default().say(reason));
            }
        }
    }
}
