//! Four characters that tell two plans apart.

use serde::Serialize;

/// The letters and digits used: none that is taken for another in wet ink.
const DIGITS: &[u8; 32] = b"23456789ABCDEFGHJKLMNPQRSTUVWXYZ";

/// Offset basis and prime of the 64-bit FNV-1a hash.
const BASIS: u64 = 0xcbf2_9ce4_8422_2325;
const PRIME: u64 = 0x0000_0100_0000_01b3;

/// The first 20 bits of an FNV-1a hash of the plan's JSON.
#[must_use]
pub(super) fn fingerprint(plan: &impl Serialize) -> String {
    let bytes = serde_json::to_vec(plan).unwrap_or_default();
    let hash = bytes.iter().fold(BASIS, |hash, byte| {
        (hash ^ u64::from(*byte)).wrapping_mul(PRIME)
    });
    // Five bits name one of the 32 digits.
    let bits = |i: u32| (hash >> (59 - 5 * i)) & 31;
    let digit = |i: u32| usize::try_from(bits(i)).ok().and_then(|at| DIGITS.get(at));
    (0..4).filter_map(digit).map(|d| char::from(*d)).collect()
}
