namespace Loadmark.Browser.Tests.House;

/// <summary>What is wrong with how a page is laid out, as the browser itself measures it.</summary>
internal static class Layout
{
    // What makes the document wider than the window; nothing when it is not.
    private const string Wide = """
        () => {
            const width = document.documentElement.clientWidth;
            if (document.scrollingElement.scrollWidth <= width)
                return [];
            const clips = element => { for (let at = element.parentElement; at; at = at.parentElement) { if (getComputedStyle(at).overflowX !== "visible") return true; } return false; };
            const wide = [...document.querySelectorAll("body *")].filter(element => element.getBoundingClientRect().right > width + 0.5 && !clips(element));
            return [`the document is ${document.scrollingElement.scrollWidth} wide in ${width}`, ...wide.slice(0, 8).map(element => `${element.tagName.toLowerCase()}.${element.className.baseVal ?? element.className} “${(element.textContent ?? "").trim().slice(0, 40)}” reaches ${Math.round(element.getBoundingClientRect().right)}`)];
        }
        """;

    // WCAG 2.2, success criterion 2.5.8: 24 by 24 CSS pixels, or a circle of 24 about its centre that meets no other target's; not for links in a sentence.
    private const string Small = """
        () => {
            const least = 24;
            const shown = element => { const box = element.getBoundingClientRect(); return box.width > 1 && box.height > 1 && element.checkVisibility({ visibilityProperty: true, opacityProperty: false }); };
            const boxOf = element => {
                const boxes = [element, ...(element.labels ?? [])].filter(shown).map(one => one.getBoundingClientRect());
                const [left, top, right, bottom] = [Math.min(...boxes.map(b => b.left)), Math.min(...boxes.map(b => b.top)), Math.max(...boxes.map(b => b.right)), Math.max(...boxes.map(b => b.bottom))];
                return { left, top, right, bottom, width: right - left, height: bottom - top };
            };
            const inSentence = element => element.tagName === "A" && getComputedStyle(element).display === "inline" && (element.parentElement.textContent.trim().length > element.textContent.trim().length);
            const targets = [...document.querySelectorAll("a[href], button, input, select, textarea, summary, svg .can-pick")]
                .filter(element => shown(element) && !element.matches(".skip") && !inSentence(element) && !element.disabled)
                .map(element => ({ element, box: element.type === "checkbox" || element.type === "radio" || element.type === "file" ? boxOf(element) : element.getBoundingClientRect() }));
            const isSmall = target => target.box.width < least - 0.01 || target.box.height < least - 0.01;
            const centre = target => ({ x: (target.box.left + target.box.right) / 2, y: (target.box.top + target.box.bottom) / 2 });
            const crowds = (small, other) => {
                const at = centre(small);
                if (isSmall(other)) {
                    const there = centre(other);
                    return Math.hypot(at.x - there.x, at.y - there.y) < least;
                }
                const [x, y] = [Math.max(other.box.left, Math.min(at.x, other.box.right)), Math.max(other.box.top, Math.min(at.y, other.box.bottom))];
                return Math.hypot(at.x - x, at.y - y) < least / 2;
            };
            const related = (one, other) => one.element.contains(other.element) || other.element.contains(one.element);
            return targets.filter(isSmall).filter(small => targets.some(other => other !== small && !related(small, other) && crowds(small, other)))
                .map(target => `${target.element.tagName.toLowerCase()}.${target.element.className.baseVal ?? target.element.className} “${(target.element.getAttribute("aria-label") ?? target.element.textContent ?? "").trim().slice(0, 40)}” is ${Math.round(target.box.width * 10) / 10} by ${Math.round(target.box.height * 10) / 10}`);
        }
        """;

    // Text that its own box cuts off, and controls that lie on one another.
    private const string Lost = """
        () => {
            const shown = element => { const box = element.getBoundingClientRect(); return box.width > 1 && box.height > 1 && element.checkVisibility({ visibilityProperty: true }); };
            const name = element => `${element.tagName.toLowerCase()}.${element.className.baseVal ?? element.className} “${(element.getAttribute("aria-label") ?? element.textContent ?? element.value ?? "").trim().replace(/\s+/g, " ").slice(0, 40)}”`;
            const cut = [...document.querySelectorAll("body *")].filter(element => shown(element) && !element.closest("svg, .visually-hidden, textarea, input, select")
                && [...element.childNodes].some(node => node.nodeType === 3 && node.textContent.trim().length > 0)
                && ["hidden", "clip"].includes(getComputedStyle(element).overflowX) && (element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1))
                .map(element => `${name(element)} is cut off`);
            const controls = [...document.querySelectorAll("a[href], button, input:not([type=file]), select, textarea, summary")].filter(element => shown(element) && !element.matches(".skip"));
            const boxes = controls.map(element => element.getBoundingClientRect());
            const sticky = element => element.closest(".bar, .drawing, .notices") !== null;
            const on = [];
            for (let one = 0; one < controls.length; one++) {
                for (let other = one + 1; other < controls.length; other++) {
                    const [a, b] = [boxes[one], boxes[other]];
                    const overlap = Math.min(a.right, b.right) - Math.max(a.left, b.left) > 2 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 2;
                    if (overlap && sticky(controls[one]) === sticky(controls[other]) && !controls[one].contains(controls[other]) && !controls[other].contains(controls[one]))
                        on.push(`${name(controls[one])} lies on ${name(controls[other])}`);
                }
            }
            return [...cut, ...on];
        }
        """;

    /// <summary>What makes the document scroll sideways.</summary>
    public static Task<string[]> WideAsync(IPage page) => page.EvaluateAsync<string[]>(Wide);

    /// <summary>Targets that a finger misses.</summary>
    public static Task<string[]> SmallAsync(IPage page) => page.EvaluateAsync<string[]>(Small);

    /// <summary>Text that is cut off and controls that overlap.</summary>
    public static Task<string[]> LostAsync(IPage page) => page.EvaluateAsync<string[]>(Lost);
}
