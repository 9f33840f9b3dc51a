//! What must stop a job and what must be an open point, in every region, for every stone, supply, place,
//! method, mask and protector, on a job that has neither otherwise.
//!
//! The tables here are written from the published rules, not from the code: each row names its source.
//! The cells are taken with a stride prime to every axis, so that any two values of any two axes meet.

use kerfwright::diag::Finding;
use kerfwright::hazard::{Work, assess};
use kerfwright::job::{self, DustMethod, Job, Power, Protection, Protector, Respirator, Workplace};
use kerfwright::tables::region::RegionCode;
use kerfwright::tables::respirator::MaskClass;

use crate::factors::{american, australian, british, german};

/// One value of the supply's axis: power, wet rating, protection.
type Supply = (Power, bool, Protection);
/// One value of the method's axis: method, water in litres a minute, airflow in m³/h.
type Method = (DustMethod, f64, f64);

const STONES: [&str; 18] = [
    "granite",
    "gabbro",
    "basalt",
    "gneiss",
    "marble",
    "limestone",
    "travertine",
    "sandstone",
    "quartzite",
    "slate",
    "soapstone",
    "serpentine",
    "amphibolite",
    "terrazzo",
    "engineered stone",
    "porcelain",
    "sintered stone",
    "house blend",
];
const SUPPLIES: [Supply; 7] = [
    (Power::Battery, true, Protection::Battery),
    (Power::Battery, false, Protection::Battery),
    (Power::Mains, true, Protection::Rcd),
    (Power::Mains, true, Protection::None),
    (Power::Mains, false, Protection::Gfci),
    (Power::Air, true, Protection::None),
    (Power::Engine, true, Protection::None),
];
const PLACES: [Workplace; 2] = [Workplace::Outdoors, Workplace::Indoors];
const METHODS: [Method; 5] = [
    (DustMethod::Water, 0.5, 0.0),
    (DustMethod::Water, 0.0, 0.0),
    (DustMethod::Shroud, 0.0, 300.0),
    (DustMethod::Shroud, 0.0, 50.0),
    (DustMethod::None, 0.0, 0.0),
];
const MASKS: [Respirator; 13] = [
    Respirator::None,
    Respirator::Nuisance,
    Respirator::Mask(MaskClass::N95),
    Respirator::Mask(MaskClass::P100),
    Respirator::Mask(MaskClass::P2),
    Respirator::Mask(MaskClass::Ffp2),
    Respirator::Mask(MaskClass::Ffp3),
    Respirator::Mask(MaskClass::FullFace),
    Respirator::Mask(MaskClass::Th1),
    Respirator::Mask(MaskClass::Th2),
    Respirator::Mask(MaskClass::Th3),
    Respirator::Mask(MaskClass::PoweredHood),
    Respirator::Mask(MaskClass::PoweredFullFace),
];
/// The last holds back next to nothing: half an hour at 104 dB(A) is 92.0 dB(A) over the day, and 90 or
/// more under it by any derating of SNR 2. By OSHA's dose it is 84 dBA, below 90.
const PROTECTORS: [Protector; 3] = [
    Protector::Snr(30.0),
    Protector::Unknown,
    Protector::Snr(2.0),
];
/// Minutes with the disc in the stone.
const MINUTES: f64 = 30.0;
/// Prime, and no factor of any axis.
const STRIDE: usize = 17;

/// One cell of the matrix.
#[derive(Clone, Copy, Debug)]
struct Cell {
    region: RegionCode,
    stone: &'static str,
    supply: Supply,
    place: Workplace,
    method: Method,
    mask: Respirator,
    protector: Protector,
}

/// A job of one stone, without a stop of its own.
fn job_of(stone: &str) -> Job {
    let own = match stone {
        "house blend" => "density = 2400\nstrength = 20\nsilica = 40\n",
        _ => "",
    };
    let text = format!(
        "[stone]\nkind = \"{stone}\"\nthickness = 30\nsteel = \"none\"\n{own}\
         [slab]\nrectangle = [900, 700]\n[top]\nrectangle = [600, 500]\n\
         [machine]\nrpm = 9800\nnoise = 104\nnoise_c = 104\nlargest_disc = 125\nvibration = {{ a = 4, k = 1.5 }}\n\
         [[disc]]\ndiameter = 125\nmax_rpm = 12200\n\
         [dust]\nmask_fit_tested = true\n[lift]\npeople = 2\n"
    );
    let read = job::read(&text);
    read.unwrap_or_else(|faults| panic!("{stone}: {faults:?}"))
        .0
}

fn work(job: &Job) -> Work {
    Work {
        kerf_volume_mm3: 2e5,
        sawn_face_mm2: 1e5,
        trigger_minutes: MINUTES,
        discs: job.discs.clone(),
    }
}

impl Cell {
    /// The cell with a number, every axis a digit of it.
    fn at(mut number: usize) -> Self {
        let mut digit = |count: usize| {
            let value = number % count;
            number /= count;
            value
        };
        Self {
            region: RegionCode::ALL[digit(RegionCode::ALL.len())],
            stone: STONES[digit(STONES.len())],
            supply: SUPPLIES[digit(SUPPLIES.len())],
            place: PLACES[digit(PLACES.len())],
            method: METHODS[digit(METHODS.len())],
            mask: MASKS[digit(MASKS.len())],
            protector: PROTECTORS[digit(PROTECTORS.len())],
        }
    }

    fn all() -> impl Iterator<Item = Self> {
        let count = RegionCode::ALL.len()
            * STONES.len()
            * SUPPLIES.len()
            * PLACES.len()
            * METHODS.len()
            * MASKS.len()
            * PROTECTORS.len();
        (0..count).step_by(STRIDE).map(Self::at)
    }

    fn put_into(self, job: &mut Job) {
        job.region = self.region;
        (
            job.machine.power,
            job.machine.wet_rated,
            job.machine.protected,
        ) = self.supply;
        job.dust.place = self.place;
        (job.dust.method, job.dust.water_l_min, job.dust.airflow_m3h) = self.method;
        job.dust.respirator = self.mask;
        job.protector = self.protector;
    }

    fn wet(self) -> bool {
        self.method.0 == DustMethod::Water && self.method.1 > 0.0
    }

    /// Water runs, or the extractor moves the 212 m³/h that a 125 mm disc asks for (29 CFR 1926.1153
    /// Table 1, 25 cubic feet a minute for each inch).
    fn held(self) -> bool {
        self.wet() || (self.method.0 == DustMethod::Shroud && self.method.2 >= 212.0)
    }

    fn is(self, regions: &[RegionCode]) -> bool {
        regions.contains(&self.region)
    }

    fn mask_is(self, classes: &[MaskClass]) -> bool {
        matches!(self.mask, Respirator::Mask(class) if classes.contains(&class))
    }

    fn engineered(self) -> bool {
        self.stone == "engineered stone"
    }

    /// A stone of the user's own with 40 % silica; nobody said what binds it.
    fn own(self) -> bool {
        self.stone == "house blend"
    }

    /// Highest published share of silica, per cent (HSG201; Safe Work Australia; the regulator of Victoria; HSE
    /// stonemasonry pages for marble; Molinari 2024 for porcelain; Table Z-3 for soapstone; amphibolite and
    /// serpentine from memory).
    fn silica(self) -> f64 {
        match self.stone {
            "soapstone" => 1.0,
            "gabbro" | "basalt" | "limestone" | "travertine" | "serpentine" => 5.0,
            "amphibolite" => 20.0,
            "porcelain" | "sintered stone" => 26.0,
            "marble" => 30.0,
            "slate" | "house blend" => 40.0,
            "granite" | "gneiss" => 60.0,
            "terrazzo" => 70.0,
            "sandstone" => 95.0,
            "engineered stone" => 97.0,
            _ => 100.0,
        }
    }

    /// 8 CCR 5204(b): artificial stone above 0.1 %, natural stone above 10 %.
    fn high_exposure(self) -> bool {
        let made = [
            "terrazzo",
            "engineered stone",
            "porcelain",
            "sintered stone",
            "house blend",
        ];
        self.region == RegionCode::UsCa && (made.contains(&self.stone) || self.silica() > 10.0)
    }

    /// Least and greatest factor of the mask where it is worn; nothing when the scheme has no row for it.
    fn factor(self) -> Option<(u16, u16)> {
        let Respirator::Mask(class) = self.mask else {
            return None;
        };
        match self.region {
            RegionCode::Us | RegionCode::UsCa | RegionCode::CaQc => american(class),
            RegionCode::De => german(class),
            RegionCode::Au | RegionCode::Nz => australian(class),
            RegionCode::Other => match (american(class), british(class)) {
                (Some(a), Some(b)) => Some(if a.1 < b.1 { a } else { b }),
                (a, b) => a.or(b),
            },
            _ => british(class),
        }
    }

    /// What factor is asked for.
    fn asked(self) -> Asked {
        if !self.held() {
            return Asked::Assess;
        }
        if self.high_exposure() {
            return Asked::AtLeast(1000);
        }
        match self.region {
            // Table 1 (xii), up to 4 h: water or shroud outdoors, shroud indoors: none. Beyond the table a
            // half mask with stone over a few per cent silica (OSHA 2024; Qi and Echt 2018).
            RegionCode::Us | RegionCode::UsCa => match (self.place, self.wet()) {
                (Workplace::Indoors, true) => Asked::Assess,
                _ if self.silica() > 5.0 => Asked::AtLeast(10),
                _ => Asked::NotByTheTable,
            },
            // CSTC 3.25.6; a P2 half mask.
            RegionCode::CaQc | RegionCode::Au | RegionCode::Nz => Asked::AtLeast(10),
            // TRGS 559 annex 3, the class of its last column.
            RegionCode::De => Asked::AtLeast(30),
            // HSE stonemasonry pages; the others have no rule of their own on file.
            _ => Asked::AtLeast(20),
        }
    }

    fn unprotected(self) -> bool {
        self.supply.0 == Power::Mains && self.supply.2 == Protection::None
    }
}

/// What factor is asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Asked {
    /// Table 1 lists it without a respirator, and the stone is poor in silica.
    NotByTheTable,
    AtLeast(u16),
    /// No row anywhere.
    Assess,
}

/// A finding and when it is due.
type Rule = (&'static str, fn(Cell) -> bool);

/// Where engineered stone may not be cut at all: Australia, and the strictest for a region not on file.
const BANNED: [RegionCode; 2] = [RegionCode::Au, RegionCode::Other];
const POWERED: [MaskClass; 5] = [
    MaskClass::Th1,
    MaskClass::Th2,
    MaskClass::Th3,
    MaskClass::PoweredHood,
    MaskClass::PoweredFullFace,
];
/// Where the day adds up by equal energy: 85 or 87 dB(A) under the protector.
const EQUAL_ENERGY: [RegionCode; 9] = [
    RegionCode::Eu,
    RegionCode::De,
    RegionCode::Nl,
    RegionCode::No,
    RegionCode::Uk,
    RegionCode::CaQc,
    RegionCode::Au,
    RegionCode::Nz,
    RegionCode::Other,
];

/// What must stop.
const STOPS: &[Rule] = &[
    // Neither water nor a shroud that works.
    ("no-dust-control", |c| c.method.0 == DustMethod::None),
    ("no-water-flow", |c| {
        c.method.0 == DustMethod::Water && c.method.1 <= 0.0
    }),
    ("shroud-airflow-too-small", |c| {
        c.method.0 == DustMethod::Shroud && c.method.2 < 212.0
    }),
    // IEC 62841-2-3: no liquid on a machine that is not made for it.
    ("water-on-mains-unrated", |c| {
        c.wet() && !c.supply.1 && c.supply.0 == Power::Mains
    }),
    ("water-not-rated", |c| {
        c.wet() && !c.supply.1 && c.supply.0 != Power::Mains
    }),
    // BS 7671: 30 mA outdoors; nowhere wet without protection.
    ("supply-unprotected", |c| c.unprotected() && c.wet()),
    ("supply-unprotected-outdoors", |c| {
        c.unprotected() && !c.wet() && c.place == Workplace::Outdoors
    }),
    ("engine-indoors", |c| {
        c.supply.0 == Power::Engine && c.place == Workplace::Indoors
    }),
    // Banned, or never dry and behind a powered respirator (HSE; 8 CCR 5204; a region without a rule takes
    // the strictest conditions published).
    ("engineered-stone-banned", |c| {
        c.engineered() && c.is(&BANNED)
    }),
    ("engineered-stone-dry", |c| {
        c.engineered() && !c.is(&BANNED) && !c.wet()
    }),
    ("engineered-stone-powered-respirator", |c| {
        c.engineered() && !c.is(&BANNED) && !c.mask_is(&POWERED)
    }),
    ("binder-unknown", |c| {
        c.own() && (c.is(&BANNED) || !c.wet() || !c.mask_is(&POWERED))
    }),
    // 8 CCR 5204: wet without exception.
    ("silica-rich-stone-dry", |c| {
        c.high_exposure() && !c.engineered() && !c.own() && !c.wet()
    }),
    // TRGS 517 annex 1.
    ("asbestos-not-tested", |c| {
        ["soapstone", "serpentine"].contains(&c.stone)
    }),
    ("nuisance-mask", |c| c.mask == Respirator::Nuisance),
    ("respirator-missing", |c| {
        c.mask == Respirator::None && matches!(c.asked(), Asked::AtLeast(_))
    }),
    ("respirator-missing-unassessed", |c| {
        c.mask == Respirator::None && c.asked() == Asked::Assess
    }),
    ("respirator-not-in-scheme", |c| {
        matches!(c.mask, Respirator::Mask(_))
            && c.factor().is_none()
            && c.asked() != Asked::NotByTheTable
    }),
    (
        "respirator-below-required",
        |c| matches!((c.asked(), c.factor()), (Asked::AtLeast(apf), Some((_, most))) if most < apf),
    ),
    // CSTC 3.25.6: a filter of the 100 series.
    ("respirator-filter", |c| {
        c.region == RegionCode::CaQc && c.mask_is(&[MaskClass::N95])
    }),
    ("noise-over-limit", |c| {
        c.protector == Protector::Snr(2.0) && c.is(&EQUAL_ENERGY)
    }),
];

/// What must be open.
const OPEN: &[Rule] = &[
    ("supply-unprotected-dry", |c| {
        c.unprotected() && !c.wet() && c.place == Workplace::Indoors
    }),
    // TRGS 517 annex 1.
    ("asbestos-declaration", |c| {
        ["gabbro", "basalt", "amphibolite"].contains(&c.stone)
    }),
    ("stone-kind-unknown", |c| {
        c.stone == "terrazzo" || (c.own() && !c.is(&BANNED) && c.wet() && c.mask_is(&POWERED))
    }),
    // Porcelain and sintered stone are outside the ban only without resin.
    ("resin-in-fired-slab", |c| {
        ["porcelain", "sintered stone"].contains(&c.stone) && c.is(&BANNED)
    }),
    // Table 1 has no row for a wet grinder indoors.
    ("not-in-table-indoors", |c| {
        c.held() && c.asked() == Asked::Assess
    }),
    ("respirator-none-asked", |c| {
        c.mask == Respirator::None && c.asked() == Asked::NotByTheTable
    }),
    (
        "respirator-class",
        |c| matches!((c.asked(), c.factor()), (Asked::AtLeast(apf), Some((least, most))) if least < apf && most >= apf),
    ),
    ("protector-unknown", |c| c.protector == Protector::Unknown),
];

fn due(rules: &[Rule], cell: Cell) -> Vec<&'static str> {
    let mut ids: Vec<_> = rules.iter().filter(|r| r.1(cell)).map(|r| r.0).collect();
    ids.sort_unstable();
    ids
}

fn ids<'f>(findings: impl Iterator<Item = &'f Finding>) -> Vec<&'static str> {
    let mut ids: Vec<_> = findings.map(Finding::id).collect();
    ids.retain(|id| *id != "controls-open"); // Open wherever anything is cut.
    ids.sort_unstable();
    ids
}

#[test]
fn what_must_stop_stops_what_must_be_open_is_open_and_nothing_else_does() {
    let mut jobs = STONES.map(job_of);
    let (mut wrong, mut seen) = (Vec::new(), 0);
    for cell in Cell::all() {
        let stone = STONES.iter().position(|name| *name == cell.stone);
        let job = &mut jobs[stone.expect("a stone of the list")];
        cell.put_into(job);
        let found = assess(job, &work(job)).1;
        let (stops, must_stop) = (ids(found.stops.iter()), due(STOPS, cell));
        let (points, must_be_open) = (ids(found.open.iter()), due(OPEN, cell));
        if stops != must_stop || points != must_be_open {
            wrong.push(format!(
                "{cell:?}\n  stops {stops:?}, must {must_stop:?}\n  open {points:?}, must {must_be_open:?}"
            ));
        }
        seen += 1;
    }
    let few = wrong[..wrong.len().min(12)].join("\n");
    assert!(wrong.is_empty(), "{} of {seen}:\n{few}", wrong.len());
    assert!(seen > 30_000);
}

#[test]
fn every_rule_of_the_tables_is_met_by_some_cell_and_missed_by_another() {
    for (id, when) in STOPS.iter().chain(OPEN) {
        assert!(Cell::all().any(when), "{id} is never due");
        assert!(!Cell::all().all(when), "{id} is always due");
    }
}
