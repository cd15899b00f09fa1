# A window of WebKitGTK for WebKitWebDriver, with storage on disk: Debian's MiniBrowser forgets everything when it is driven.
import os
import sys

import gi

gi.require_version("Gtk", "3.0")
gi.require_version("WebKit2", "4.1")
from gi.repository import Gtk, WebKit2  # noqa: E402

profile, downloads = sys.argv[1:3]
data = WebKit2.WebsiteDataManager(base_data_directory=profile, base_cache_directory=os.path.join(profile, "cache"))
context = WebKit2.WebContext(website_data_manager=data)
context.set_automation_allowed(True)

# What a page must never do, kept where a test can ask for it.
watch = """
(() => {
  const faults = [];
  Object.defineProperty(window, "faultsOfPage", { value: faults });
  addEventListener("error", (e) => faults.push("error: " + e.message));
  addEventListener("unhandledrejection", (e) => faults.push("unhandled: " + e.reason));
  addEventListener("securitypolicyviolation", (e) => faults.push("page policy broken: " + e.violatedDirective + " " + e.blockedURI));
  for (const level of ["error", "warn"]) {
    const said = console[level].bind(console);
    console[level] = (...words) => { faults.push(level + ": " + words.join(" ")); said(...words); };
  }
})();
"""


def window(_session):
    content = WebKit2.UserContentManager()
    content.add_script(
        WebKit2.UserScript(
            watch, WebKit2.UserContentInjectedFrames.TOP_FRAME, WebKit2.UserScriptInjectionTime.START, None, None
        )
    )
    view = WebKit2.WebView(web_context=context, user_content_manager=content, is_controlled_by_automation=True)
    shown = Gtk.Window()
    shown.set_default_size(820, 1180)
    shown.add(view)
    shown.show_all()
    return view


def started(_context, session):
    info = WebKit2.ApplicationInfo()
    info.set_name("WebKitGTK")
    info.set_version(WebKit2.get_major_version(), WebKit2.get_minor_version(), WebKit2.get_micro_version())
    session.set_application_info(info)
    session.connect("create-web-view", window)


def destination(download, name):
    download.set_destination("file://" + os.path.join(downloads, name))
    return True


context.connect("automation-started", started)
context.connect("download-started", lambda _context, download: download.connect("decide-destination", destination))
Gtk.main()
