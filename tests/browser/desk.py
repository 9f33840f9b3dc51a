"""The desk in a real browser: a whole job from an empty form to its sheet, by the keyboard where a
person would use it; faults, saves, two windows, a hostile page.

Run with the program as the argument: python3 tests/browser/desk.py target/release/kerfwright
With axe-core as a second one (axe.min.js) the form is checked against WCAG 2.2, levels A and AA, as well.
Pictures of the form go into the folder that KERFWRIGHT_PICTURES names, when it does.
"""

import glob
import http.server
import os
import signal
import subprocess
import sys
import tempfile
import threading
import time
import unittest

from driver import Browser

CHECKER = sys.argv.pop(2) if sys.argv[2:] and sys.argv[2].endswith(".js") else None
PROGRAM = os.path.abspath(sys.argv.pop(1)) if len(sys.argv) > 1 else "kerfwright"
OUTCOME = "return document.getElementById('outcome')?.textContent ?? ''"
STATE = "return document.getElementById('state').textContent"
FIELD = "[data-path='{}'] {}"


class Desk(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.downloads = tempfile.mkdtemp()
        cls.browser = Browser(cls.downloads)
        cls.addClassCleanup(cls.browser.close)

    def setUp(self):
        self.folder = tempfile.mkdtemp()
        self.browser.new_tab()
        self.file = os.path.join(self.folder, "job.toml")

    def start(self, text=None):
        if text is not None:
            with open(self.file, "w", encoding="utf-8") as file:
                file.write(text)
        self.program = subprocess.Popen(
            [PROGRAM, "desk", "--no-open"], cwd=self.folder, stdout=subprocess.PIPE, text=True
        )
        self.addCleanup(self.stop)
        self.address = next(line.strip() for line in self.program.stdout if "http" in line)
        self.browser.open(self.address)
        self.browser.wait(OUTCOME)

    def stop(self):
        self.program.kill()
        self.program.wait()
        self.program.stdout.close()

    def saved(self):
        with open(self.file, encoding="utf-8") as file:
            return file.read()

    def field(self, path, which="input, select"):
        selector = ", ".join(FIELD.format(path, one.strip()) for one in which.split(","))
        return self.browser.find(selector)

    def give(self, path, value, which="input, select"):
        """Types a value into the first control of a field, or chooses it there."""
        control = self.field(path, which)
        self.browser.run("arguments[0].closest('details')?.setAttribute('open', '')", control.as_argument())
        if self.browser.run("return arguments[0].tagName", control.as_argument()) == "SELECT":
            self.choose(control, value)
        else:
            control.select()
            self.browser.type(value)

    def give_each(self, path, *values):
        """Types values into the controls of a field, one after the other."""
        for i, value in enumerate(values, 1):
            self.browser.find(f"[data-path='{path}'] .row > .one:nth-child({i}) input").select()
            self.browser.type(value)

    def choose(self, control, value):
        choose = """
            arguments[0].value = arguments[1];
            if (arguments[0].value !== arguments[1]) throw Error('there is no ' + arguments[1]);
            for (const name of ['input', 'change']) arguments[0].dispatchEvent(new Event(name, { bubbles: true }));
        """
        self.browser.run(choose, control.as_argument(), value)

    def until(self, words, script=OUTCOME):
        return self.browser.wait(f"const s = (() => {{ {script} }})(); return s.includes(arguments[0]) && s", words)

    def press_button(self, name):
        self.browser.find(f"#{name}").click()

    def save(self):
        self.press_button("save")
        self.until("Saved", STATE)

    def test_a_whole_job_from_an_empty_form_to_its_sheet(self):
        self.start()
        self.assertIn("missing or wrong", self.browser.run(OUTCOME))
        self.assertIn("new job", self.browser.run(STATE))
        # By the keyboard alone, as everything that follows.
        self.tab_to("To the form")
        self.browser.press("enter")
        for name, *keys in [("Kind", "granite"), ("Thickness, 1", "30"), ("Rectangle, length", "2400"),
                            ("Rectangle, depth", "800"), ("Rectangle, length", "2.1 m"), ("Rectangle, depth", "640")]:
            self.tab_to(name)
            self.browser.press(*[key for typed in keys for key in typed])
        self.until("The top fits")
        self.browser.wait("return document.querySelectorAll('#drawing [data-part]').length > 8")
        # Over to the drawing: an edge of the slab, an edge and a corner of the top.
        self.browser.press_together("control", "enter")
        self.point("Edge AB of the slab", "f", "factory")
        self.point("Edge 1-2 of the top", "p", "polish")
        self.point("Corner 2 of the top", "r", "round", "100")
        self.browser.press_together("control", "enter")
        self.assertEqual(self.browser.active().label(), "Rectangle, depth")
        self.until("The top fits")
        self.browser.press_together("control", "s")
        self.until("Saved", STATE)
        text = self.saved()
        for line in ['kind = "granite"', "thickness = 30", "rectangle = [2400, 800]", 'rectangle = ["2.1 m", 640]',
                     'factory = ["AB"]', "round = { 2 = 100 }", 'finish = { 1-2 = "polish" }']:
            self.assertIn(line, text)
        self.tab_to("Sheet")
        self.browser.press("enter")
        pdf = self.downloaded()
        self.assertTrue(pdf.startswith(b"%PDF-") and pdf.rstrip().endswith(b"%%EOF"))

    def tab_to(self, name):
        """On with Tab until what a screen reader calls so has the focus."""
        for _ in range(300):
            if (seen := self.browser.focused()) == name:
                return
            self.browser.press("tab")
        self.fail(f"Tab never comes to {name}; the last was {seen}")

    def point(self, name, letter, word, size=""):
        """Chooses in the drawing, by the first letter."""
        text = "return document.getElementById('text').value"
        self.tab_to(name)
        self.browser.press("enter")
        self.browser.wait("return !document.getElementById('part').hidden")
        self.browser.press(letter, *size)
        self.until(size or word, text)
        self.browser.press("escape")
        self.browser.wait("return document.getElementById('part').hidden")

    def downloaded(self):
        until = time.monotonic() + 60
        while not (found := glob.glob(os.path.join(self.downloads, "*.pdf"))):
            self.assertLess(time.monotonic(), until, "no sheet came")
            time.sleep(0.2)
        with open(found[0], "rb") as file:
            return file.read()

    def test_a_click_in_the_drawing_reaches_the_part_under_it(self):
        self.start(SHELF)
        self.browser.click_middle("#drawing [data-part='top.3-4']")
        self.until("Edge 3-4 of the top", "return document.getElementById('part').textContent")
        self.choose(self.browser.find("#part select"), "ease")
        self.browser.wait("return document.getElementById('text').value.includes('3-4')")

    def test_a_fault_is_shown_beside_its_field_and_cleared(self):
        self.start(SHELF)
        self.until("The top fits")
        self.give("slab.rectangle", "7000000")
        said = "return document.querySelector(\"[data-path='slab.rectangle'] .fault\")?.textContent ?? ''"
        words = self.until("slab.rectangle", said)
        self.save()
        check = subprocess.run([PROGRAM, "check", self.file], capture_output=True, text=True, check=False)
        self.assertIn(words.split(" → ")[0], check.stderr)
        control = self.field("slab.rectangle")
        self.assertEqual(self.browser.run("return arguments[0].getAttribute('aria-invalid')", control.as_argument()), "true")
        self.give("slab.rectangle", "700")
        self.until("The top fits")
        self.assertEqual(self.browser.run(said), "")

    def test_what_is_saved_is_there_when_it_is_read_again(self):
        self.start(SHELF)
        self.give("lift.people", "4")
        self.give("disc[0].kerf", "2.4")
        self.until("The top fits")
        self.save()
        self.assertEqual(self.saved(), SHELF.replace("people = 2", "people = 4").replace("kerf = 2.2 ", "kerf = 2.4 "))
        self.browser.open(self.address)
        self.browser.wait(OUTCOME)
        value = self.browser.run("return arguments[0].value", self.field("disc[0].kerf").as_argument())
        self.assertEqual(value, "2.4")

    def test_sections_are_added_filled_in_and_removed(self):
        self.start(SHELF)
        button = self.browser.find("[data-path='slab.flaw'] > button")
        button.click()
        self.browser.wait("return document.querySelector(\"[data-path='slab.flaw[0]']\")")
        self.browser.wait("return document.activeElement.closest(\"[data-path='slab.flaw[0]']\")")
        self.until("missing or wrong")
        self.give("slab.flaw[0].what", "crack")
        self.browser.find("[data-path='slab.flaw[0].spot.across'] input").type("20")
        self.give_each("slab.flaw[0].spot.at", "650", "350")
        self.until("The top fits")
        self.save()
        self.assertIn("spot = { across = 20, at = [650, 350] }", self.saved())
        self.browser.find("[data-path='slab.flaw[0]'] > button").click()
        self.browser.wait("return !document.querySelector(\"[data-path='slab.flaw[0]']\")")
        self.save()
        self.assertNotIn("flaw", self.saved())

    def test_inches(self):
        self.start()
        self.give("job.units", "in")
        self.give("stone.kind", "slate")
        self.give("stone.thickness", "1 1/4")
        self.give_each("slab.rectangle", "60", "24 1/2")
        self.give_each("top.rectangle", "48", "16")
        self.until("The top fits")
        unit = "return document.querySelector(\"[data-path='slab.rectangle'] .one .unit:last-child\").textContent"
        self.until("in", unit)
        self.save()
        self.assertIn('rectangle = [60, "24 1/2"]', self.saved())

    def test_a_file_to_fill_in_becomes_a_basin_top(self):
        subprocess.run([PROGRAM, "new", self.file], capture_output=True, check=True)
        self.start()
        self.until("6 things are missing")
        self.assertEqual(self.browser.run("return arguments[0].value", self.field("stone.kind").as_argument()), "")
        self.give("stone.kind", "marble")
        self.give("stone.thickness", "20")
        self.give_each("slab.rectangle", "1400", "620")
        self.give_each("top.rectangle", "1200", "520")
        self.until("The top fits")
        self.browser.find("[data-path='top.cutout'] > button").click()
        self.browser.wait("return document.activeElement.closest(\"[data-path='top.cutout[0]']\")")
        self.browser.type("basin")
        way = self.browser.find("[data-path='top.cutout[0]'] .group select")
        self.browser.run("arguments[0].focus()", way.as_argument())
        self.browser.type("Ci")
        self.give("top.cutout[0].circle", "380")
        self.give_each("top.cutout[0].at", "600", "270")
        self.browser.wait("return document.querySelector(\"#drawing [data-part='top.cutout.0']\")")
        self.save()
        for line in ['what = "basin"', "circle = 380", "at = [600, 270]", "rectangle = [1200, 520]    # length and depth"]:
            self.assertIn(line, self.saved())
        sheet = subprocess.run([PROGRAM, self.file], cwd=self.folder, capture_output=True, text=True, check=False)
        self.assertIn("job sheet written", sheet.stdout)

    def test_two_windows_lose_no_change(self):
        self.start(SHELF)
        first = self.browser.tab()
        self.give("disc[0].kerf", "2.6")
        self.until("kerf = 2.6", "return document.getElementById('text').value")
        self.browser.new_tab()
        self.browser.open(self.address)
        self.browser.wait(OUTCOME)
        self.give("lift.people", "3")
        self.until("people = 3", "return document.getElementById('text').value")
        self.save()
        self.browser.switch(first)
        self.press_button("save")
        self.until("nothing was written", "return document.getElementById('notice').textContent")
        self.assertIn("people = 3", self.saved())
        self.assertNotIn("2.6", self.saved())
        self.browser.find("#notice button").click()
        self.until("people = 3", "return document.getElementById('text').value")
        self.until("kerf = 2.6", "return document.getElementById('text').value")
        self.save()
        self.assertIn("people = 3", self.saved())
        self.assertIn("kerf = 2.6", self.saved())

    def test_a_text_that_is_not_toml_can_be_mended_in_the_page(self):
        self.start("[stone\n" + SHELF)
        self.until("Line 1", "return document.getElementById('under').textContent")
        self.assertTrue(self.browser.run("return document.getElementById('form').inert"))
        script = """
            const text = document.getElementById('text');
            text.value = text.value.replace('[stone\\n', '');
            text.dispatchEvent(new Event('input', { bubbles: true }));
        """
        self.browser.run(script)
        self.until("The top fits")
        self.assertFalse(self.browser.run("return document.getElementById('form').inert"))

    def test_an_open_point_leads_to_its_field(self):
        self.start(SHELF)
        self.until("The top fits")
        key = self.browser.run(
            """const link = [...document.querySelectorAll('#under .link')].find((l) => l.textContent.startsWith('To clear it: '));
               link.click(); return link.dataset.key;"""
        )
        path = self.browser.run("return document.activeElement.closest('[data-path]').dataset.path")
        self.assertTrue(path.replace("[0]", "").startswith(key), f"{path} for {key}")

    def test_another_place_is_taken(self):
        self.start(SHELF)
        self.until("The top fits")
        self.press_button("places")
        self.browser.wait("return document.querySelectorAll('#others article').length")
        self.browser.find("#others article:last-of-type button").click()
        self.until("[place]", "return document.getElementById('text').value")
        self.until("The top fits")

    def test_every_control_has_a_name_and_the_answer_is_said(self):
        self.start(SHELF)
        self.browser.run("document.querySelectorAll('details').forEach((d) => { d.open = true; })")
        controls = self.browser.find_all("input, select, button, textarea, summary, [data-part]")
        self.assertGreater(len(controls), 150)
        self.assertEqual([c.source() for c in controls if not c.label()], [])
        # Two fields of one step are called alike only in sections of their own.
        twice = """
            const home = (el) => el.closest('fieldset, .step');
            const names = [...document.querySelectorAll('.step .name')].filter((n) => !n.closest('.field').hidden);
            return names.filter((n) => names.some((m) => m !== n && home(m) === home(n) && m.textContent === n.textContent))
                .map((n) => n.closest('[data-path]').dataset.path);
        """
        self.assertEqual(self.browser.run(twice), [])
        self.assertEqual(self.field("slab.rectangle").label(), "Rectangle, length")
        self.assertEqual(self.browser.run("return document.getElementById('outcome').getAttribute('role')"), "status")
        parts = self.browser.run("return [...document.querySelectorAll('[data-part]')].map((p) => p.getAttribute('aria-label'))")
        self.assertIn("Edge 1-2 of the top", parts)
        self.assertIn("Corner C of the slab", parts)

    def test_nothing_sticks_out_and_the_rules_are_kept_at_any_width(self):
        self.start(SHELF)
        self.until("The top fits")
        if CHECKER:
            with open(CHECKER, encoding="utf-8") as file:
                self.browser.load_checker(file.read())
        pictures = os.environ.get("KERFWRIGHT_PICTURES")
        for width, height in [(360, 740), (800, 1000), (1400, 900)]:
            self.browser.size(width, height)
            self.browser.run("document.querySelectorAll('details').forEach((d) => { d.open = true; })")
            widest = self.browser.run("return document.documentElement.scrollWidth")
            self.assertLessEqual(widest, width)
            if CHECKER:
                self.assertEqual(self.browser.violations(), [])
            if pictures:
                self.browser.picture(os.path.join(pictures, f"desk-{width}.png"))

    def test_a_hostile_page_can_do_nothing(self):
        self.start(SHELF)
        hostile, address = serve_hostile()
        self.addCleanup(hostile.server_close)
        self.addCleanup(hostile.shutdown)
        self.browser.open(address)
        script = """
            const [address, done] = arguments;
            const body = JSON.stringify({ text: '', version: '' });
            const one = (how) => fetch(address + 'save', { method: 'POST', body, ...how })
                .then((a) => a.type === 'opaque' ? 'not seen' : String(a.status), () => 'refused');
            const read = fetch(address + 'file').then((a) => a.text(), () => 'refused');
            Promise.all([one({}), one({ mode: 'no-cors' }), read]).then(done);
        """
        self.assertEqual(self.browser.run_async(script, self.address), ["refused"] * 3)
        # A form of the hostile page arrives, and is refused by its origin.
        self.browser.run(
            """const form = document.createElement('form');
               form.method = 'post'; form.action = arguments[0] + 'end'; document.body.append(form); form.submit();""",
            self.address,
        )
        self.browser.wait("return document.body?.textContent.includes('another origin')")
        self.assertEqual(self.saved(), SHELF)
        self.assertIsNone(self.program.poll())

    def test_it_ends_from_the_page_and_by_ctrl_c(self):
        self.start(SHELF)
        self.press_button("end")
        self.until("ended", "return document.body.textContent")
        self.assertEqual(self.program.wait(timeout=20), 0)
        self.program.stdout.close()
        self.start()
        self.program.send_signal(signal.SIGINT)
        self.program.wait(timeout=20)
        self.assertEqual(self.saved(), SHELF)


def serve_hostile():
    """A page of another origin."""

    class Page(http.server.BaseHTTPRequestHandler):
        def do_GET(self):
            self.send_response(200)
            self.send_header("Content-Type", "text/html")
            self.end_headers()
            self.wfile.write(b"<!doctype html><title>elsewhere</title><body></body>")

        def log_message(self, *args):
            pass

    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), Page)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    return server, f"http://127.0.0.1:{server.server_port}/"


SHELF = """\
# A shelf, by hand.
[job]
title = "Shelf"
region = "uk"
[stone]
kind = "slate"     # from the shed
thickness = 20
[slab]
rectangle = [700, 400]
[top]
rectangle = [500, 250]
[[disc]]
kerf = 2.2         # by a practice cut
[lift]
people = 2
"""

if __name__ == "__main__":
    unittest.main(verbosity=2)
