// Runs before the page is drawn, so that a dark page never flashes white.
(() => {
    const system = matchMedia("(prefers-color-scheme: dark)");
    const root = document.documentElement;
    const apply = () => {
        const choice = root.dataset.theme;
        root.classList.toggle("dark", choice === "dark" || (choice !== "light" && system.matches));
    };
    root.dataset.theme = "auto";
    try {
        root.dataset.theme = localStorage.getItem("loadmark-theme") ?? "auto";
    } catch {
        // Storage is switched off: the system's choice holds.
    }
    apply();
    system.addEventListener("change", apply);
    root.addEventListener("loadmark-theme", apply);
})();
