use kerfwright::{
    cut,
    geom::{Outline, Region, boolean},
    job, place,
};
fn main() {
    let text = std::fs::read_to_string(std::env::args().nth(1).unwrap()).unwrap();
    let (job, _) = job::read(&text).unwrap();
    let (p, _) = place::place(&job).unwrap_or_else(|m| panic!("{:?}", m.reasons));
    let (cuts, _) = cut::plan(&job, &p);
    for below in [0.0, job.stone.thickness.most] {
        let mut kept = vec![Region::solid(job.slab.shape.outline().clone())];
        for c in &cuts {
            let mut slots: Vec<Outline> = c.slots_at(below);
            kept = boolean::difference(&kept, &slots);
            println!(
                "{below} cut {} {:?}",
                c.number,
                kept.iter()
                    .map(|r| (r.area() as i64, r.holes.len()))
                    .collect::<Vec<_>>()
            );
            slots.clear();
        }
        let tails: Vec<Outline> = cuts.iter().flat_map(|c| c.tails()).collect();
        println!("tails {}", tails.len());
        kept = boolean::difference(&kept, &tails);
        println!(
            "{below} hand {:?}",
            kept.iter()
                .map(|r| (r.area() as i64, r.holes.len()))
                .collect::<Vec<_>>()
        );
    }
}
