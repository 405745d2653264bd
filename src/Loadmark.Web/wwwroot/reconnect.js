// What the page does when the program behind it has gone: the framework tries to connect again for a while, and this goes on for as long as
// the page is there. A program that was started anew knows nothing of this page, which is then loaded again. Where it has another key, it lets
// this browser in once the address that it printed was opened, in any tab.
(() => {
    const modal = document.getElementById("components-reconnect-modal");
    const wait = 1500;
    const tryAgain = () => setTimeout(async () => {
        try {
            if (!await Blazor.reconnect())
                location.reload();
        } catch {
            tryAgain();
        }
    }, wait);
    const lookForKey = async () => {
        try {
            const answer = await fetch(location.href, { method: "HEAD" });
            modal.classList.toggle("asks-key", answer.status === 401);
        } catch {
            modal.classList.remove("asks-key");
        }
    };
    modal.addEventListener("components-reconnect-state-changed", event => {
        if (event.detail.state === "rejected")
            location.reload();
        else if (event.detail.state === "failed")
            tryAgain();
        else if (event.detail.state === "retrying" && event.detail.secondsToNextAttempt === 1)
            lookForKey();
    });
})();
