"""A plain client of the WebDriver protocol (W3C Recommendation, 2018) for Debian's chromium."""

import base64
import json
import shutil
import socket
import subprocess
import tempfile
import time
import urllib.error
import urllib.request

ELEMENT = "element-6066-11e4-a52e-4f735466cecf"
FLAGS = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-dev-shm-usage",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
KEYS = {"control": "\ue009", "tab": "\ue004", "enter": "\ue007", "escape": "\ue00c", "end": "\ue010", "backspace": "\ue003"}

RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
CHECKED = """
const [rules, done] = arguments;
axe.run({ runOnly: rules, resultTypes: ['violations'] }).then((found) => done(found.violations.map(
    (v) => v.id + ': ' + v.help + ': ' + v.nodes.map((n) => n.html.slice(0, 160)).join(' | '))));
"""


def free_port():
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return one.getsockname()[1]


class Browser:
    """One chromium with a fresh profile, and the folder that it saves into."""

    def __init__(self, downloads):
        self.profile = tempfile.mkdtemp()
        self.driver = subprocess.Popen(
            ["chromedriver", f"--port={(port := free_port())}"],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        self.root = f"http://127.0.0.1:{port}"
        self.session = ""
        self.session = self.started(downloads)

    def started(self, downloads):
        options = {
            "args": FLAGS + [f"--user-data-dir={self.profile}", "--window-size=1400,900"],
            "prefs": {
                "download.default_directory": downloads,
                "plugins.always_open_pdf_externally": True,
            },
        }
        wanted = {
            "capabilities": {
                "alwaysMatch": {
                    "browserName": "chrome",
                    "goog:chromeOptions": options,
                    "unhandledPromptBehavior": "ignore",
                }
            }
        }
        until = time.monotonic() + 60
        while True:
            try:
                return self.ask("POST", "/session", wanted)["sessionId"]
            except (ConnectionError, urllib.error.URLError):
                if time.monotonic() > until:
                    raise
                time.sleep(0.2)

    def ask(self, method, path, body=None):
        where = f"/session/{self.session}{path}" if self.session else path
        data = None if method != "POST" else json.dumps(body or {}).encode()
        request = urllib.request.Request(self.root + where, data, method=method)
        try:
            with urllib.request.urlopen(request, timeout=120) as answer:
                return json.load(answer)["value"]
        except urllib.error.HTTPError as fault:
            said = json.load(fault)["value"]
            raise RuntimeError(f"{said['error']}: {said['message']}") from None

    def close(self):
        try:
            self.ask("DELETE", "")
        finally:
            self.driver.terminate()
            self.driver.wait()
            shutil.rmtree(self.profile, ignore_errors=True)

    def open(self, address):
        self.ask("POST", "/url", {"url": address})

    def run(self, script, *args):
        """What a script in the page returns."""
        return self.ask("POST", "/execute/sync", {"script": script, "args": list(args)})

    def run_async(self, script, *args):
        """What a script in the page gives to its last argument."""
        return self.ask("POST", "/execute/async", {"script": script, "args": list(args)})

    def load_checker(self, script):
        """Loads axe-core into the page."""
        self.run(script + "; window.axe = axe;")

    def violations(self):
        """What axe-core, loaded before, finds against its rules for WCAG 2.2, levels A and AA."""
        return self.run_async(CHECKED, RULES)

    def find(self, selector):
        found = self.ask("POST", "/element", {"using": "css selector", "value": selector})
        return Element(self, found[ELEMENT])

    def find_all(self, selector):
        """What is seen of a kind."""
        script = "return [...document.querySelectorAll(arguments[0])].filter((one) => one.checkVisibility())"
        return [Element(self, one[ELEMENT]) for one in self.run(script, selector)]

    def active(self):
        return Element(self, self.ask("GET", "/element/active")[ELEMENT])

    def focused(self):
        """What a screen reader says has the focus; asked again where the page drew it anew in between."""
        for _ in range(20):
            try:
                return self.active().label()
            except RuntimeError as fault:
                if "stale element" not in str(fault):
                    raise
        raise RuntimeError("what has the focus is drawn anew without end")

    def press(self, *keys):
        """Keys pressed one after the other, wherever the focus is."""
        actions = []
        for key in keys:
            key = KEYS.get(key, key)
            actions += [{"type": "keyDown", "value": key}, {"type": "keyUp", "value": key}]
        self.ask("POST", "/actions", {"actions": [{"type": "key", "id": "keys", "actions": actions}]})

    def press_together(self, *keys):
        """Keys held down one after the other, and let go of together."""
        keys = [KEYS.get(key, key) for key in keys]
        actions = [{"type": "keyDown", "value": key} for key in keys]
        actions += [{"type": "keyUp", "value": key} for key in reversed(keys)]
        self.ask("POST", "/actions", {"actions": [{"type": "key", "id": "keys", "actions": actions}]})

    def type(self, text):
        self.press(*text)

    def click_middle(self, selector):
        """A click where the middle of an element is seen, whatever lies there on top."""
        script = """
            const part = document.querySelector(arguments[0]);
            part.scrollIntoView({ block: 'center' });
            const box = part.getBoundingClientRect();
            return [box.x + box.width / 2, box.y + box.height / 2].map(Math.round);
        """
        x, y = self.run(script, selector)
        move = {"type": "pointerMove", "duration": 0, "origin": "viewport", "x": x, "y": y}
        press = [{"type": kind, "button": 0} for kind in ("pointerDown", "pointerUp")]
        mouse = {"type": "pointer", "id": "mouse", "parameters": {"pointerType": "mouse"}, "actions": [move, *press]}
        self.ask("POST", "/actions", {"actions": [mouse]})

    def size(self, width, height):
        """The size of what is seen of a page; a window cannot be so narrow as a telephone."""
        metrics = {"width": width, "height": height, "deviceScaleFactor": 1, "mobile": False}
        body = {"cmd": "Emulation.setDeviceMetricsOverride", "params": metrics}
        self.ask("POST", "/goog/cdp/execute", body)

    def picture(self, path):
        with open(path, "wb") as file:
            file.write(base64.b64decode(self.ask("GET", "/screenshot")))

    def tab(self):
        return self.ask("GET", "/window")

    def switch(self, tab):
        self.ask("POST", "/window", {"handle": tab})

    def new_tab(self):
        tab = self.ask("POST", "/window/new", {"type": "tab"})["handle"]
        self.switch(tab)
        return tab

    def wait(self, script, *args, seconds=60):
        """Until a script in the page returns something that counts as true; what it returns."""
        until = time.monotonic() + seconds
        while not (value := self.run(script, *args)):
            if time.monotonic() > until:
                raise AssertionError(f"waited {seconds} s for: {script} {args}")
            time.sleep(0.03)
        return value


class Element:
    """An element of the page."""

    def __init__(self, browser, name):
        self.browser = browser
        self.name = name

    def as_argument(self):
        return {ELEMENT: self.name}

    def click(self):
        self.browser.ask("POST", f"/element/{self.name}/click")

    def type(self, text):
        self.browser.ask("POST", f"/element/{self.name}/value", {"text": text})

    def select(self):
        """All that stands in it, so that what is typed next takes its place."""
        self.browser.run("arguments[0].focus(); arguments[0].select();", self.as_argument())

    def source(self):
        return self.browser.run("return arguments[0].outerHTML", self.as_argument())

    def label(self):
        """What a screen reader says it is called."""
        return self.browser.ask("GET", f"/element/{self.name}/computedlabel")
