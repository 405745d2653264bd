namespace Loadmark.Browser.Tests.House;

/// <summary>Every address of the page, with something behind it and with nothing.</summary>
internal static class ColdAddresses
{
    private const string Loaded = """
        rig: Loaded
        loads:
          drive-3: { kind: analog drive, label: 9V DC 12mA centre negative }
          delay-2: { kind: digital, label: 9V DC 300mA centre negative }
        supplies:
          wall: { label: OUTPUT 9V 2A centre negative, outlets: { 1: "" } }
        wired:
          - { from: wall/1, to: drive-3 }

        """;

    private const string Empty = "rig: Empty\n";
    private const string OnlySupplies = "rig: Supplies\nsupplies:\n  wall: { label: OUTPUT 9V 2A centre negative, outlets: { 1: \"\" } }\n";
    private const string NoOne = "00000000-0000-0000-0000-000000000001";
    private const string Rig = "/rig/{Id:guid}";
    private const string RigPart = "/rig/{Id:guid}/{Part}";
    private const string Gear = "/gear/{Id:guid}";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<ColdAddress> All { get; } =
    [
        new("/", "rigs", async kept =>
        {
            await kept.AddRigAsync(Loaded);
            return "/";
        }, DuplicateAsync),
        new("/", "no rigs", async kept =>
        {
            await kept.RemoveRigsAsync();
            return "/";
        }, BeginAsync),
        new("/not-found", "itself", static _ => Task.FromResult("/not-found"), BackToTheRigsAsync),
        new("/gear", "gear", async kept =>
        {
            await kept.RemoveGearAsync();
            await kept.AddLoadAsync("drive-3", "9V DC 12mA");
            return "/gear";
        }, FindGearAsync),
        new("/gear", "no gear", async kept =>
        {
            await kept.RemoveGearAsync();
            return "/gear";
        }, TypeGearAsync),
        new(Gear, "a load", async kept =>
        {
            await kept.RemoveGearAsync();
            await kept.AddLoadAsync("drive-3", "9V DC 12mA");
            return await kept.AddressOfLoadAsync("drive-3");
        }, FileGearAsync),
        new(Gear, "not there", static _ => Task.FromResult($"/gear/{NoOne}"), BackToTheGearAsync),
        new(Rig, "not there", static _ => Task.FromResult($"/rig/{NoOne}"), BackToTheRigsAsync),
        new(RigPart, "not there", static _ => Task.FromResult($"/rig/{NoOne}/gear"), BackToTheRigsAsync),
        .. OfRig("loads", Loaded),
        .. OfRig("no loads", Empty),
        .. OfRig("supplies and no loads", OnlySupplies),
    ];

    private static IEnumerable<ColdAddress> OfRig(string name, string text)
    {
        foreach (var part in RigPages.Parts.Select(static one => one.Part).Append("no-such-part"))
        {
            yield return new ColdAddress(
                part.Length == 0 ? Rig : RigPart,
                part.Length == 0 ? name : $"{part}, {name}",
                async kept => await kept.AddRigAsync(text) + (part.Length == 0 ? "" : $"/{part}"),
                page => ChangePartAsync(page, part == "wire" ? "buy" : "wire"));
        }
    }

    private static async Task ChangePartAsync(IPage page, string other)
    {
        await page.GetByRole(AriaRole.Navigation, new() { Name = "What to do" }).Locator($"a[href$='/{other}']").ClickAsync();
        await page.WaitForPartAsync(other);
        await page.GetByRole(AriaRole.Button, new() { Name = "Keys" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Dialog)).ToBeVisibleAsync();
    }

    private static async Task DuplicateAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = "Duplicate Loaded", Exact = true }).First.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Loaded, copy", Exact = true }).First).ToBeVisibleAsync();
    }

    private static async Task BeginAsync(IPage page)
    {
        await Expect(page.Locator(".riglist")).ToHaveCountAsync(0);
        await page.GetByLabel("A new rig").FillAsync("Begun cold");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Begun cold", Level = 1 })).ToBeVisibleAsync();
    }

    private static async Task BackToTheRigsAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Link, new() { Name = "Back to the rigs" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "May I plug this in?" })).ToBeVisibleAsync();
    }

    private static async Task FindGearAsync(IPage page)
    {
        await page.GetByPlaceholder("Find gear ( / )").FillAsync("drive");
        await Expect(page.Locator("#gear-title .count")).ToHaveTextAsync("1 of 1");
    }

    private static async Task TypeGearAsync(IPage page)
    {
        await Expect(page.Locator("#gear-title .count")).ToHaveTextAsync("0");
        await page.GetByLabel("What is printed on the gear").FillAsync("delay-2: 9V DC 300mA");
        await Expect(page.Locator("#gear-entry-preview")).ToContainTextAsync("300 mA");
    }

    private static async Task FileGearAsync(IPage page)
    {
        await page.GetByLabel("Filed under").FillAsync("pit");
        await page.GetByLabel("Filed under").PressAsync("Tab");
        await Expect(page.Locator("ol.history")).ToContainTextAsync("pit");
    }

    private static async Task BackToTheGearAsync(IPage page)
    {
        await page.GetByRole(AriaRole.Main).GetByRole(AriaRole.Link, new() { Name = "Gear library" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Gear library", Level = 1 })).ToBeVisibleAsync();
    }
}
