"""The sheet as one page for a telephone in a real browser, from a file, without a network: on a telephone's
screen and on a desk's, by touch and by keys, after a reload, without scripts, in the dark; and what an outside
checker (axe-core) finds against WCAG 2.2, levels A and AA.

Run with the program and the checker: python3 tests/browser/phone.py target/release/kerfwright axe.min.js
Pictures of every screen go into the folder that KERFWRIGHT_PICTURES names, when it does.
"""

import os
import subprocess
import sys
import tempfile
import unittest

from driver import Browser

CHECKER = os.path.abspath(sys.argv.pop(2))
PROGRAM = os.path.abspath(sys.argv.pop(1))
ROOT = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..")
JOBS = {
    "counter": ("examples/tea-counter.toml", []),
    "german": ("tests/golden/basin-and-two-taps/job.toml", ["--language", "de", "--annex"]),
    "stops": ("tests/pdf_sheet/many-stops.toml", []),
}
SIZES = {"telephone": (360, 640), "desk": (1280, 800)}
OPEN = "return document.querySelector('.screen.open').id"
SCREENS = "return Array.from(document.querySelectorAll('.screen'), (s) => s.id)"
SMALL = """
const seen = (e) => e.getClientRects().length !== 0;
const all = Array.from(document.querySelectorAll('a, button, input, label')).filter(seen);
const box = (e) => (e.closest('label') || e).getBoundingClientRect();
return all.filter((e) => Math.min(box(e).width, box(e).height) < 44)
    .map((e) => e.outerHTML.slice(0, 120) + ' ' + box(e).width + ' x ' + box(e).height);
"""


class Phone(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.mkdtemp()
        cls.pages = {name: cls.written(name, *job) for name, job in JOBS.items()}
        with open(CHECKER, encoding="utf-8") as file:
            cls.checker = file.read()

    @classmethod
    def written(cls, name, job, more):
        page = os.path.join(cls.folder, name + ".html")
        made = subprocess.run(
            [PROGRAM, "sheet", job, "-o", page, *more], cwd=ROOT, stdout=subprocess.DEVNULL, check=False
        )
        assert made.returncode == (1 if name == "stops" else 0), (name, made.returncode)
        return "file://" + page

    def setUp(self):
        self.browser = Browser(self.folder)
        self.addCleanup(self.browser.close)
        self.cdp("Network.enable")
        offline = {"offline": True, "latency": 0, "downloadThroughput": 0, "uploadThroughput": 0}
        self.cdp("Network.emulateNetworkConditions", **offline)
        self.browser.size(*SIZES["telephone"])

    def cdp(self, command, **parameters):
        body = {"cmd": command, "params": parameters}
        return self.browser.ask("POST", "/goog/cdp/execute", body)

    def open(self, name, screen=""):
        self.browser.open("about:blank")
        self.browser.open(self.pages[name] + screen)

    def click(self, selector):
        into_view = "document.querySelector(arguments[0]).scrollIntoView({ block: 'center' })"
        self.browser.run(into_view, selector)
        self.browser.find(selector).click()

    def check(self, width):
        """What the outside checker finds, with nothing of the screen below the bar."""
        height = self.browser.run("return document.documentElement.scrollHeight")
        self.browser.size(width, height + 200)
        self.assertEqual(self.browser.violations(), [])

    def go(self, screen):
        self.browser.run("location.hash = arguments[0]", screen)
        self.arrives(screen)

    def arrives(self, screen):
        self.browser.wait(OPEN + " === arguments[0]", screen, seconds=10)

    def swipe(self, across, down=0):
        def touch(kind, *points):
            self.cdp("Input.dispatchTouchEvent", type=kind, touchPoints=list(points))

        from_x, from_y = 180 - across / 2, 250
        touch("touchStart", {"x": from_x, "y": from_y})
        touch("touchMove", {"x": from_x + across / 2, "y": from_y + down / 2})
        touch("touchMove", {"x": from_x + across, "y": from_y + down})
        touch("touchEnd")

    def picture(self, name):
        folder = os.environ.get("KERFWRIGHT_PICTURES")
        if folder:
            self.browser.picture(os.path.join(folder, name + ".png"))

    def test_every_screen_fits_and_keeps_the_rules(self):
        for name in JOBS:
            self.open(name)
            self.browser.load_checker(self.checker)
            for size, (width, height) in SIZES.items():
                self.browser.size(width, height)
                for screen in self.browser.run(SCREENS):
                    with self.subTest(job=name, size=size, screen=screen):
                        self.go(screen)
                        self.picture(f"{name}-{size}-{screen}")
                        wide = self.browser.run("return document.documentElement.scrollWidth")
                        self.assertLessEqual(wide, width)
                        self.assertEqual(self.browser.run(SMALL), [])
                        self.check(width)
                        self.browser.size(width, height)

    def test_the_dark_page_keeps_the_rules(self):
        dark = [{"name": "prefers-color-scheme", "value": "dark"}]
        self.cdp("Emulation.setEmulatedMedia", features=dark)
        self.open("stops")
        self.browser.load_checker(self.checker)
        paper = "return getComputedStyle(document.body.parentElement).backgroundColor"
        self.assertEqual(self.browser.run(paper), "rgb(12, 12, 12)")
        for screen in self.browser.run(SCREENS):
            with self.subTest(screen=screen):
                self.go(screen)
                self.picture(f"dark-{screen}")
                self.check(360)
        self.click("#light")
        self.assertEqual(self.browser.run(paper), "rgb(255, 255, 255)")
        self.open("stops")
        self.assertEqual(self.browser.run(paper), "rgb(255, 255, 255)", "it stays bright")

    def first(self, inside):
        """The id of the first screen that holds what a selector names, other than the STOP page."""
        script = "return document.querySelector(arguments[0]).closest('.screen').id"
        return self.browser.run(script, f".screen:not(#stop){inside}")

    def test_ticks_stay_on_this_telephone_and_with_this_plan(self):
        self.open("counter")
        self.go(self.first(".cut"))
        ticked = "return Array.from(document.querySelectorAll('[type=checkbox]')).filter((t) => t.checked).length"
        self.assertEqual(self.browser.run(ticked), 0)
        for label in (1, 2, 3):
            self.click(f".open .run label:nth-of-type({label})")
        self.go(self.first(" [data-key='helper-fill-address']"))
        self.browser.find(".open [data-key='helper-fill-address']").type("Quay 4")
        self.open("counter")
        self.assertEqual(self.browser.run(ticked), 3)
        self.go(self.first(".cut"))
        self.assertTrue(self.browser.run("return document.querySelector('.open .run input').checked"))
        self.click(".bar .stop")
        address = "return document.querySelector('#stop [data-key=\"helper-fill-address\"]').value"
        self.assertEqual(self.browser.run(address), "Quay 4")
        self.open("stops")
        self.assertEqual(self.browser.run(ticked), 0, "another plan has its own ticks")
        self.open("counter", "#contents")
        self.click("#clear")
        self.browser.ask("POST", "/alert/accept")
        self.assertEqual(self.browser.run(ticked), 0)
        self.open("counter")
        self.assertEqual(self.browser.run(ticked), 0)
        self.assertEqual(self.browser.run(address), "Quay 4", "only ticks are taken away")

    def test_on_and_back_by_button_swipe_and_keys(self):
        self.open("counter")
        self.arrives("b1")
        self.assertTrue(self.browser.run("return document.getElementById('back').disabled"))
        order = [s for s in self.browser.run(SCREENS) if s not in ("contents", "stop")]
        for screen in order[1:]:
            self.click("#next")
            self.arrives(screen)
            focus = "return document.activeElement.closest('.screen')?.id"
            self.assertEqual(self.browser.run(focus), screen)
        self.assertTrue(self.browser.run("return document.getElementById('next').disabled"))
        self.click("#back")
        self.arrives(order[-2])
        self.cdp("Emulation.setTouchEmulationEnabled", enabled=True)
        self.go("b1")
        self.swipe(-160)
        self.arrives("b2")
        self.swipe(160)
        self.arrives("b1")
        self.swipe(-40)
        self.swipe(-90, down=120)
        self.assertEqual(self.browser.run(OPEN), "b1", "a short or a slanting swipe turns no page")
        self.browser.run("document.getElementById('next').focus()")
        self.browser.press("enter")
        self.arrives("b2")

    def test_stop_and_the_helper_are_one_touch_away_and_the_way_back_is_kept(self):
        self.open("german")
        for screen in self.browser.run(SCREENS):
            self.go(screen)
            self.click(".bar .stop")
            self.arrives("stop")
            calls = "return document.querySelector('.open .call a').getAttribute('href')"
            self.assertEqual(self.browser.run(calls), "tel:999")
        self.go(self.first(".cut"))
        self.click(".bar .stop")
        self.click("#back")
        self.arrives(self.first(".cut"))
        self.click(".bar a[lang=de]")
        language = "return document.querySelector('.screen.open').lang"
        self.assertEqual(self.browser.run(language), "de")
        self.click("#back")
        self.arrives(self.first(".cut"))

    def test_a_touch_on_a_drawing_shows_it_larger(self):
        self.open("counter")
        wide = "return document.querySelector('.open figure svg').getBoundingClientRect().width"
        before = self.browser.run(wide)
        self.click(".open figure")
        self.assertGreater(self.browser.run(wide), 2 * before)
        self.assertLessEqual(self.browser.run("return document.documentElement.scrollWidth"), 360)
        self.picture("counter-larger")
        self.click(".open figure")
        self.assertEqual(self.browser.run(wide), before)

    def test_the_screen_stays_awake_while_a_cut_is_open(self):
        self.cdp("Browser.grantPermissions", permissions=["wakeLockScreen"])
        self.open("counter")
        self.go(self.first(".cut"))
        awake = "return document.documentElement.dataset.awake"
        self.browser.wait(awake + " === 'true'", seconds=10)
        self.go("b1")
        self.browser.wait(awake + " === 'false'", seconds=10)

    def test_without_scripts_it_is_a_plain_long_page(self):
        self.cdp("Emulation.setScriptExecutionDisabled", value=True)
        self.open("counter")
        shown = "return Array.from(document.querySelectorAll('.screen')).filter((s) => s.offsetHeight > 0).length"
        self.assertEqual(self.browser.run(shown), len(self.browser.run(SCREENS)))
        buttons = "return Array.from(document.querySelectorAll('button')).filter((b) => b.offsetHeight > 0).length"
        self.assertEqual(self.browser.run(buttons), 0)
        self.click(".bar .stop")
        top = "return Math.round(document.getElementById('stop').getBoundingClientRect().top)"
        self.assertLess(abs(self.browser.run(top)), 200)
        self.picture("without-scripts")

    def test_nothing_is_loaded(self):
        self.open("counter")
        loaded = "return performance.getEntriesByType('resource').map((e) => e.name)"
        self.assertEqual(self.browser.run(loaded), [])


if __name__ == "__main__":
    unittest.main()
