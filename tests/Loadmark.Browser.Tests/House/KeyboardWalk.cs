namespace Loadmark.Browser.Tests.House;

/// <summary>Somebody who has a keyboard and nothing else. Counts the presses, and sees to it that the focus can be seen wherever it goes.</summary>
/// <param name="page">The page.</param>
internal sealed class KeyboardWalk(IPage page)
{
    private const int Farthest = 200;

    // What has the focus, in a word or two; and what is wrong with how that shows.
    private const string Look = """
        () => {
            const at = document.activeElement;
            if (!at || at === document.body)
                return { name: "nothing", fault: "" };
            const name = `${at.tagName.toLowerCase()} “${(at.getAttribute("aria-label") ?? at.labels?.[0]?.textContent ?? at.textContent ?? "").trim().replace(/\s+/g, " ").slice(0, 60)}”`;
            const box = at.getBoundingClientRect();
            const shown = at.type === "file" ? at.parentElement : at;
            const style = getComputedStyle(shown);
            const fault = box.width < 1 || box.height < 1 ? "has no size"
                : box.bottom <= 0 || box.top >= innerHeight || box.right <= 0 || box.left >= innerWidth ? "is out of sight"
                : style.outlineStyle === "none" || parseFloat(style.outlineWidth) === 0 ? "shows no focus" : "";
            return { name, fault };
        }
        """;

    private readonly List<string> _trail = [];

    /// <summary>How often Tab was pressed, with Shift or without.</summary>
    public int Tabs { get; private set; }

    /// <summary>How far each step was: where to, and how many presses of Tab.</summary>
    public List<(string To, int Tabs)> Steps { get; } = [];

    /// <summary>Where the focus could not be seen.</summary>
    public HashSet<string> Unseen { get; } = new(StringComparer.Ordinal);

    /// <summary>Presses Tab until something has the focus.</summary>
    /// <param name="target">What.</param>
    /// <param name="backwards">With Shift.</param>
    public async Task ToAsync(ILocator target, bool backwards = false)
    {
        await Expect(target).ToHaveCountAsync(1);
        var count = 0;
        _trail.Clear();
        while (!await target.EvaluateAsync<bool>("element => element === document.activeElement"))
        {
            Assert.True(count < Farthest, $"{Farthest} presses of Tab do not reach {target}; they went: {string.Join(", ", _trail)}");
            await page.Keyboard.PressAsync(backwards ? "Shift+Tab" : "Tab");
            count++;
            var look = await page.EvaluateAsync<Sight>(Look);
            _trail.Add(look.Name);
            if (look.Fault.Length > 0)
                Unseen.Add($"{look.Name} {look.Fault}");
        }

        Tabs += count;
        Steps.Add((target.ToString() ?? "", count));
    }

    /// <summary>Types, with Enter at the end of each line but the last.</summary>
    public async Task TypeAsync(string text)
    {
        var lines = text.Split('\n');
        for (var place = 0; place < lines.Length; place++)
        {
            if (place > 0)
                await page.Keyboard.PressAsync("Enter");
            await page.Keyboard.TypeAsync(lines[place]);
        }
    }

    /// <summary>Presses a key.</summary>
    public Task PressAsync(string key) => page.Keyboard.PressAsync(key);

    /// <summary>What has the focus, in a word or two.</summary>
    public async Task<string> FocusAsync() => (await page.EvaluateAsync<Sight>(Look)).Name;

    private sealed class Sight
    {
        public string Name { get; set; } = "";

        public string Fault { get; set; } = "";
    }
}
