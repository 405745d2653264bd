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
        } else if (event.key === "?" && !isTyping(event.target)) {
            event.preventDefault();
            page.invokeMethodAsync("KeyAsync", "keys").catch(() => { });
        } else if (event.key === "/" && !isTyping(event.target)) {
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
