// What the page needs of the browser and cannot ask for from the server: theme, keys, widths, pointers, dropped files.
const root = document.documentElement;

let layout = null;
const tellTheme = () => layout?.invokeMethodAsync("ShowDark", root.classList.contains("dark")).catch(() => { });

/** Tells the layout light or dark now and whenever that changes; returns the user's choice. */
export function watchTheme(page) {
    if (!layout)
        new MutationObserver(tellTheme).observe(root, { attributeFilter: ["class"] });
    layout = page;
    tellTheme();
    return root.dataset.theme ?? "auto";
}

/** Sets light, dark or as the system has it, and remembers it. */
export function chooseTheme(choice) {
    root.dataset.theme = choice;
    root.dispatchEvent(new Event("loadmark-theme"));
    try {
        localStorage.setItem("loadmark-theme", choice);
    } catch {
        // It holds until the page is left.
    }
}

const isTyping = target => target instanceof HTMLElement
    && (target.isContentEditable || target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement
        || (target instanceof HTMLInputElement && !["button", "checkbox", "radio", "range", "file"].includes(target.type)));

const isMoving = () => !matchMedia("(prefers-reduced-motion: reduce)").matches;

/** Whether keys without Ctrl do something on the page ("/" and "?"): who speaks to the machine or strikes keys by mistake turns them off. */
export function singleKeys() {
    try {
        return localStorage.getItem("loadmark-single-keys") !== "off";
    } catch {
        return root.dataset.singleKeys !== "off";
    }
}

/** Turns keys without Ctrl on or off, and remembers it. */
export function chooseSingleKeys(on) {
    root.dataset.singleKeys = on ? "on" : "off";
    try {
        localStorage.setItem("loadmark-single-keys", on ? "on" : "off");
    } catch {
        // It holds until the page is left.
    }
}

/** Sends the keys that work everywhere on the page: undo, redo, find. */
export function watchKeys(page) {
    const handler = event => {
        if (document.querySelector("[role=dialog]"))
            return;
        const undo = (event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === "z";
        const redo = (event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === "y";
        if ((undo || redo) && !isTyping(event.target)) {
            event.preventDefault();
            page.invokeMethodAsync("KeyAsync", redo || event.shiftKey ? "redo" : "undo").catch(() => { });
        } else if (event.key === "?" && !isTyping(event.target) && singleKeys()) {
            event.preventDefault();
            page.invokeMethodAsync("KeyAsync", "keys").catch(() => { });
        } else if (event.key === "/" && !isTyping(event.target) && singleKeys()) {
            const find = document.querySelector("[data-find]");
            if (find) {
                event.preventDefault();
                find.focus();
            }
        }
    };
    document.addEventListener("keydown", handler);
    return { stop: () => document.removeEventListener("keydown", handler) };
}

// Enter in a field of a list goes on to the field of the same kind in the next row; leaving a field keeps it.
document.addEventListener("keydown", event => {
    if (event.key !== "Enter" || event.isComposing || !(event.target instanceof HTMLInputElement) || !event.target.dataset.next)
        return;
    event.preventDefault();
    const fields = [...document.querySelectorAll(`input[data-next="${CSS.escape(event.target.dataset.next)}"]`)];
    const next = fields[fields.indexOf(event.target) + (event.shiftKey ? -1 : 1)];
    if (next) {
        next.focus();
        next.select();
    } else {
        event.target.blur();
        event.target.focus();
    }
});

/** Tells a component the width there is for it, now and whenever that changes. */
export function watchWidth(element, page) {
    let last = 0;
    let timer = 0;
    const tell = () => {
        const width = Math.round(element.clientWidth);
        if (width > 0 && Math.abs(width - last) > 7) {
            last = width;
            page.invokeMethodAsync("SetWidthAsync", width).catch(() => { });
        }
    };
    const observer = new ResizeObserver(() => {
        clearTimeout(timer);
        timer = setTimeout(tell, 60);
    });
    observer.observe(element);
    tell();
    return { stop: () => observer.disconnect() };
}

/** Tells a component where along a plot the pointer is, 0 to 1 of the element's width, at most every 40 ms, and turns of the wheel. */
export function watchPlot(element, page) {
    let busy = false;
    let waiting = null;
    const send = async () => {
        if (busy || waiting === null)
            return;
        const at = waiting;
        waiting = null;
        busy = true;
        try {
            await page.invokeMethodAsync("PointAsync", at);
        } catch {
            // The page has gone.
        }
        setTimeout(() => {
            busy = false;
            send();
        }, 40);
    };
    const place = event => {
        const box = element.getBoundingClientRect();
        return (event.clientX - box.left) / box.width;
    };
    const move = event => {
        waiting = place(event);
        send();
    };
    const wheel = event => {
        if (!event.ctrlKey && !event.shiftKey)
            return;
        event.preventDefault();
        page.invokeMethodAsync("ZoomAsync", place(event), event.deltaY < 0 ? 0.7 : 1 / 0.7).catch(() => { });
    };
    element.addEventListener("pointermove", move);
    element.addEventListener("wheel", wheel, { passive: false });
    return {
        stop: () => {
            element.removeEventListener("pointermove", move);
            element.removeEventListener("wheel", wheel);
        },
    };
}

/**
 * Asks a component every second, while the page is seen, whether its rig was changed elsewhere. Not while something typed is not sent yet:
 * what comes would overwrite it.
 */
export function watchNews(page) {
    let typed = null;
    let busy = false;
    const input = event => typed = isTyping(event.target) ? event.target : typed;
    const sent = () => typed = null;
    const ask = async () => {
        if (busy || document.hidden || (typed !== null && typed === document.activeElement))
            return;
        busy = true;
        try {
            await page.invokeMethodAsync("FollowAsync");
        } catch {
            // The page has gone, or the program has: what is new is asked for when it is there again.
        }
        busy = false;
    };
    document.addEventListener("input", input);
    document.addEventListener("change", sent);
    document.addEventListener("visibilitychange", ask);
    const timer = setInterval(ask, 1000);
    return {
        stop: () => {
            clearInterval(timer);
            document.removeEventListener("input", input);
            document.removeEventListener("change", sent);
            document.removeEventListener("visibilitychange", ask);
        },
    };
}

/** Scrolls the diagram so that parts of it are in sight; with none, back to where it was before the first of them. */
export function bringIntoSight(paper, ids) {
    const box = paper.closest(".drawing");
    if (!box)
        return;
    const behavior = isMoving() ? "smooth" : "auto";
    if (ids.length === 0) {
        if (box.dataset.before !== undefined)
            box.scrollTo({ top: Number(box.dataset.before), behavior });
        delete box.dataset.before;
        return;
    }
    const wanted = new Set(ids);
    const places = [...paper.querySelectorAll("[data-subject]")].filter(part => wanted.has(part.dataset.subject)).map(part => part.getBoundingClientRect());
    if (places.length === 0)
        return;
    const frame = box.getBoundingClientRect();
    const top = Math.min(...places.map(place => place.top));
    const bottom = Math.max(...places.map(place => place.bottom));
    if (top >= frame.top && bottom <= frame.bottom)
        return;
    box.dataset.before ??= String(box.scrollTop);

    // What is taller than the frame is shown from its top.
    const spare = Math.max(8, (frame.height - (bottom - top)) / 2);
    box.scrollTo({ top: box.scrollTop + top - frame.top - spare, behavior });
}

// Whoever loses what they were on, because it was taken off the page or switched off, goes on in the same part of it: where that part says,
// or at its heading. Once an answer is there that was waited for, they go on at that, unless they have gone elsewhere meanwhile.
let last = [];
let put = null;
const focusOn = element => {
    if (!element)
        return;
    if (element.tabIndex < 0 && !element.hasAttribute("tabindex"))
        element.tabIndex = -1;
    element.focus({ preventScroll: true });
    element.scrollIntoView({ block: "nearest" });
    put = element;
};
document.addEventListener("focusin", event => {
    last = [];
    for (let element = event.target; element instanceof Element && element !== document.body; element = element.parentElement)
        last.push(element);
});
new MutationObserver(changes => {
    const answer = changes.flatMap(change => [...change.addedNodes]).filter(node => node instanceof Element)
        .map(node => node.matches("[data-answer]") ? node : node.querySelector("[data-answer]")).find(Boolean);
    if (answer && put !== null && document.activeElement === put) {
        focusOn(answer);
        return;
    }
    if (last.length === 0 || document.activeElement !== document.body || (last[0].isConnected && !last[0].disabled))
        return;
    const place = last.find(element => element.isConnected && element.matches("[data-goes-on], .panel, main"));
    last = [];
    if (place)
        focusOn(place.querySelector(place.dataset.goesOn ?? "h2, h1"));
}).observe(document.body, { subtree: true, childList: true, attributeFilter: ["disabled"] });

// What was typed and not taken yet stays when its field goes, with its part or with the page, and is there again when the field is.
const fieldsIn = nodes => [...nodes].filter(node => node instanceof Element)
    .flatMap(node => [...(node.matches("[data-draft]") ? [node] : []), ...node.querySelectorAll("[data-draft]")]);
const keepDraft = field => {
    try {
        if (field.value)
            sessionStorage.setItem(`loadmark-draft ${field.dataset.draft}`, field.value);
        else
            sessionStorage.removeItem(`loadmark-draft ${field.dataset.draft}`);
    } catch {
        // Without storage it goes with the page.
    }
};
const bringDraft = field => {
    let draft = null;
    try {
        draft = sessionStorage.getItem(`loadmark-draft ${field.dataset.draft}`);
    } catch {
        // Nothing was kept.
    }
    if (!draft || field.value)
        return;
    field.value = draft;
    field.dispatchEvent(new Event("input", { bubbles: true }));
};
addEventListener("pagehide", () => fieldsIn([document.body]).forEach(keepDraft));
new MutationObserver(changes => {
    for (const change of changes) {
        fieldsIn(change.removedNodes).filter(field => !field.isConnected).forEach(keepDraft);
        fieldsIn(change.addedNodes).filter(field => field.isConnected).forEach(bringDraft);
    }
}).observe(document.body, { subtree: true, childList: true });
fieldsIn([document.body]).forEach(bringDraft);

/** Prints the page. */
export function print() {
    window.print();
}

// A file that is dragged over the page turns all of it into the file field it has, so that dropping works like choosing.
let depth = 0;
const setDropping = on => root.classList.toggle("dropping", on);
document.addEventListener("dragenter", event => {
    if (event.dataTransfer?.types.includes("Files")) {
        depth++;
        setDropping(true);
    }
});
document.addEventListener("dragleave", () => {
    depth = Math.max(0, depth - 1);
    setDropping(depth > 0);
});
document.addEventListener("drop", event => {
    depth = 0;
    setDropping(false);
    if (!(event.target instanceof HTMLInputElement && event.target.type === "file"))
        event.preventDefault();
});
document.addEventListener("dragover", event => {
    if (!(event.target instanceof HTMLInputElement))
        event.preventDefault();
});
