//! The disc: its speed, and what breaks or throws it.

use std::f64::consts::PI;

use serde::Serialize;

use super::notes::Notes;
use super::{Work, discs_on};
use crate::job::{Disc, Job};
use crate::tables::disc::{EN_12413, HAND_RIM_SPEED_M_S, HIGHEST_RIM_SPEED_M_S, WIDEST_RIM_GAP_MM};
use crate::tables::documents as doc;

/// Speed of one disc on this machine.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct DiscReport {
    /// Name as printed.
    pub name: String,
    /// Diameter, mm.
    pub diameter_mm: f64,
    /// Speed of the machine without load, turns a minute.
    pub machine_rpm: f64,
    /// Highest speed marked on the disc, turns a minute.
    pub marked_rpm: f64,
    /// Rim speed on this machine, m/s.
    pub rim_speed_m_s: f64,
    /// Rim speed at the marked turns, m/s.
    pub marked_speed_m_s: f64,
}

/// Rim speed `πDn/60000`, m/s, of a diameter in mm at turns a minute.
///
/// ```
/// let speed = kerfwright::hazard::disc::rim_speed_m_s(230.0, 6643.0);
/// assert!((speed - 80.0).abs() < 0.01);
/// ```
#[must_use]
pub fn rim_speed_m_s(diameter_mm: f64, rpm: f64) -> f64 {
    // 60 seconds to a minute, 1000 mm to a metre.
    PI * diameter_mm * rpm / 60_000.0
}

/// Turns a minute at which a diameter in mm has a rim speed in m/s.
#[must_use]
pub fn rpm_at(diameter_mm: f64, speed_m_s: f64) -> f64 {
    speed_m_s * 60_000.0 / (PI * diameter_mm)
}

/// Speeds of the discs used, and what to mind.
pub(super) fn assess(job: &Job, work: &Work, notes: &mut Notes) -> Vec<DiscReport> {
    let reports: Vec<DiscReport> = discs_on(job, work)
        .iter()
        .map(|disc| report(disc, job.machine.rpm))
        .collect();
    if !(job.machine.rpm.is_finite() && job.machine.rpm > 0.0) {
        machine_speed_unknown(job.machine.rpm, notes);
    }
    for report in &reports {
        marked_speed(report, notes);
        rim_speed(report, notes);
    }
    handling(notes);
    reports
}

fn report(disc: &Disc, machine_rpm: f64) -> DiscReport {
    DiscReport {
        name: disc.name.clone(),
        diameter_mm: disc.diameter,
        machine_rpm,
        marked_rpm: disc.max_rpm,
        rim_speed_m_s: rim_speed_m_s(disc.diameter, machine_rpm),
        marked_speed_m_s: rim_speed_m_s(disc.diameter, disc.max_rpm),
    }
}

fn machine_speed_unknown(rpm: f64, notes: &mut Notes) {
    notes.stop(
        "machine-speed-unknown",
        &doc::GRINDER_WARNINGS,
        "speed of the machine is not known",
        format!(
            "Machine {rpm:.0} turns a minute: without its true speed no disc can be checked. Read \
             the plate and enter machine.rpm."
        ),
    );
}

fn marked_speed(disc: &DiscReport, notes: &mut Notes) {
    let (machine, marked, name) = (disc.machine_rpm, disc.marked_rpm, &disc.name);
    if !(marked.is_finite() && marked > 0.0) {
        notes.stop(
            "disc-mark-unknown",
            &doc::GRINDER_WARNINGS,
            format!("{name}: highest speed not known"),
            format!(
                "Machine {machine:.0} turns a minute, disc mark not known. Read the mark on the \
                 disc and enter disc.max_rpm; a disc without a mark is not used."
            ),
        );
    } else if machine > marked {
        notes.stop(
            "disc-over-marked-rpm",
            &doc::GRINDER_WARNINGS,
            format!("{name}: machine {machine:.0} turns a minute, disc marked {marked:.0}"),
            format!(
                "The machine turns {:.0} a minute faster than the {marked:.0} marked on the disc \
                 ({:.0} m/s, marked for {:.0} m/s). The disc may fly apart: use one marked for \
                 {machine:.0} or more, or a slower machine.",
                machine - marked,
                disc.rim_speed_m_s,
                disc.marked_speed_m_s,
            ),
        );
    }
}

fn rim_speed(disc: &DiscReport, notes: &mut Notes) {
    // Whole metres a second, as the stripes are marked.
    let (speed, name) = (disc.rim_speed_m_s.round(), &disc.name);
    if speed > HIGHEST_RIM_SPEED_M_S {
        notes.stop(
            "rim-speed-over-limit",
            &EN_12413,
            format!(
                "{name}: rim speed {speed:.0} m/s, highest marked class {HIGHEST_RIM_SPEED_M_S:.0}"
            ),
            format!(
                "A {:.0} mm disc at {:.0} turns a minute runs at {speed:.0} m/s; no stripe allows \
                 more than {HIGHEST_RIM_SPEED_M_S:.0}. Smaller disc or slower machine.",
                disc.diameter_mm, disc.machine_rpm
            ),
        );
    } else if speed > HAND_RIM_SPEED_M_S {
        notes.caution(
            "rim-speed-over-limit",
            &EN_12413,
            format!("{name}: rim speed {speed:.0} m/s, hand discs are made for {HAND_RIM_SPEED_M_S:.0}"),
            format!(
                "A {:.0} mm disc at {:.0} turns a minute runs at {speed:.0} m/s. Above \
                 {HAND_RIM_SPEED_M_S:.0} m/s (red stripe) only a disc with a green stripe \
                 ({HIGHEST_RIM_SPEED_M_S:.0} m/s): look for it, or take {:.0} turns a minute or less.",
                disc.diameter_mm,
                disc.machine_rpm,
                rpm_at(disc.diameter_mm, HAND_RIM_SPEED_M_S),
            ),
        );
    }
}

/// What every cut with a disc asks for.
fn handling(notes: &mut Notes) {
    let source = &doc::GRINDER_WARNINGS;
    notes.caution(
        "never-steer-the-disc",
        source,
        "a disc cuts straight: never steer it round a curve",
        "Side load bends and breaks a disc. Side load allowed: none. Curves are made of straight \
         plunges as drawn; no grinding with the flat of a cutting disc.",
    );
    notes.caution(
        "kickback-pinched-disc",
        source,
        "a pinched disc kicks back",
        "Both sides of the cut held level and close to it, so that the kerf cannot close. Stand beside the \
         line of the disc, two hands, guard on. After a pinch: stop, let it stand still, free it, \
         enter again at full speed only.",
    );
    notes.caution(
        "disc-before-use",
        source,
        "look at the disc before each mounting",
        format!(
            "No cracks, bore to fit, guard of the disc's own size, gaps in the rim at most \
             {WIDEST_RIM_GAP_MM:.0} mm, never a worn disc from a bigger machine. Run a new disc 1 \
             minute without load, away from everybody."
        ),
    );
}
