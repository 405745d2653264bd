namespace Loadmark.Browser.Tests.House;

/// <summary>The ways through the page that many tests take.</summary>
internal static class RigPages
{
    /// <summary>The demo rig that the page is meant to be looked at first.</summary>
    public const string Pit = "Pit board, bass chair";

    /// <summary>The demo rig of forty loads.</summary>
    public const string Festival = "Bandstand festival, all boards";

    /// <summary>The parts of a rig's page: what its address ends in, and its name.</summary>
    public static IReadOnlyList<(string Part, string Name)> Parts { get; } =
        [("", "Findings"), ("gear", "Gear"), ("wire", "Wire"), ("plan", "Plan"), ("start", "Switch on"), ("buy", "Buy"), ("sheet", "Sheet"), ("accept", "Accept"), ("text", "File")];

    /// <summary>Opens the list of rigs and waits until it can be used.</summary>
    public static async Task OpenRigsAsync(this IPage page)
    {
        await page.GotoAsync("/");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "May I plug this in?" })).ToBeVisibleAsync();
        await Expect(page.Locator(".riglist li").First).ToBeVisibleAsync();
        await page.WaitForFilesAsync();
    }

    /// <summary>Waits until files can be chosen and dropped: a person is slower than that, a test is not.</summary>
    public static async Task WaitForFilesAsync(this IPage page)
    {
        await page.EvaluateAsync("() => import('/_content/Loadmark.Web/loadmark.js')");
        await page.WaitForFunctionAsync("() => [...document.querySelectorAll('input[type=file]')].every(field => field._blazorInputFileNextFileId !== undefined)");
    }

    /// <summary>The address that the list of rigs leads to, without a slash at the end.</summary>
    public static async Task<string> AddressOfAsync(this IPage page, string rig)
    {
        await page.OpenRigsAsync();
        var address = await page.GetByRole(AriaRole.Link, new() { Name = rig, Exact = true }).First.GetAttributeAsync("href");
        return "/" + address!.TrimStart('/');
    }

    /// <summary>Opens a part of a rig's page and waits for its diagram.</summary>
    public static async Task OpenPartAsync(this IPage page, string address, string part)
    {
        await page.GotoAsync(part.Length == 0 ? address : $"{address}/{part}");
        await page.WaitForPartAsync(part);
    }

    /// <summary>Waits until a part is shown, and the diagram with it; a rig begins as a sheet that has none.</summary>
    public static async Task WaitForPartAsync(this IPage page, string part)
    {
        await Expect(page.GetByRole(AriaRole.Navigation, new() { Name = "What to do" }).Locator("a[aria-current=page]"))
            .ToContainTextAsync(Parts.Single(one => one.Part == part).Name);
        await Expect(page.Locator("section.drawing svg.scene, section.drawing .begin, .entering .gearpanel").First).ToBeVisibleAsync();
    }

    /// <summary>Imports a rig file through the file field and waits for its page.</summary>
    /// <returns>The rig's address.</returns>
    public static async Task<string> ImportAsync(this IPage page, string name, byte[] content)
    {
        await page.OpenRigsAsync();
        await page.GetByLabel("Choose a file").SetInputFilesAsync(new FilePayload { Name = name, MimeType = "application/yaml", Buffer = content });
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Diagram" })).ToBeVisibleAsync();
        return string.Join('/', new Uri(page.Url).AbsolutePath.Split('/').Take(3));
    }

    /// <summary>Fills the gear library from a file, and opens one piece with a reading, a change and a rig that it means something to.</summary>
    /// <returns>The address of the piece.</returns>
    public static async Task<string> FillLibraryAsync(this IPage page)
    {
        await page.GotoAsync("/gear");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Gear library" })).ToBeVisibleAsync();
        await page.WaitForFilesAsync();
        var file = "loads:\n  drive-3: { name: Left of the pair, label: \"9V DC 12mA centre negative\", words: [drives] }\n  delay-2: { name: Delay with the long tail, label: 9V DC 300mA }\n  BAD-1: { colour: red }\nsupplies:\n  brick: { outlets: { 1: 9 V 150 mA, 2: 9 V 500 mA } }\nleads:\n  long chain: { type: daisy chain, plugs: 5 }\n"u8.ToArray();
        await page.GetByLabel("Choose a file").SetInputFilesAsync(new FilePayload { Name = "library.yaml", MimeType = "application/yaml", Buffer = file });
        var take = page.GetByRole(AriaRole.Button, new() { NameRegex = new System.Text.RegularExpressions.Regex("^Take [0-9]+ into the library$", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)) });
        await Expect(take).ToBeVisibleAsync();
        if (await take.IsEnabledAsync())
        {
            await take.ClickAsync();
            await Expect(page.Locator(".import")).ToContainTextAsync(" added");
        }

        await page.Locator(".import").GetByRole(AriaRole.Button).Last.ClickAsync();
        await Expect(page.Locator(".gearrows li")).Not.ToHaveCountAsync(0);
        return "/" + (await page.GetByRole(AriaRole.Link, new() { Name = "drive-3", Exact = true }).GetAttributeAsync("href"))!.TrimStart('/');
    }

    /// <summary>Opens a piece of the library and does to it what can be done.</summary>
    public static async Task OpenGearAsync(this IPage page, string address)
    {
        await page.GotoAsync(address);
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Measured draws" })).ToBeVisibleAsync();
        await page.GetByLabel("Reading", new() { Exact = true }).FillAsync("11.5 mA");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add the reading" }).ClickAsync();
        await Expect(page.Locator("tbody tr")).Not.ToHaveCountAsync(0);
        await Expect(page.GetByText("one reading").Or(page.GetByText("mean of")).First).ToBeVisibleAsync();
    }

    /// <summary>The verdict in the bar, once it is there.</summary>
    public static ILocator Verdict(this IPage page) => page.Locator(".bar .verdict .sev");

    /// <summary>What the rig's file holds now, as exported.</summary>
    public static async Task<byte[]> ExportAsync(this IPage page)
    {
        var download = await page.RunAndWaitForDownloadAsync(() =>
            page.GetByRole(AriaRole.Banner).GetByRole(AriaRole.Link, new() { Name = "Export" }).ClickAsync());
        return await File.ReadAllBytesAsync(await download.PathAsync());
    }
}
