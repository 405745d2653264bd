using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>A phone, and text at twice its size: nothing is lost, nothing is too small, nothing scrolls sideways.</summary>
public sealed class RoomTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served)
{
    private static readonly ViewportSize Phone = new() { Width = 390, Height = 844 };

    public static TheoryData<string> Parts => [.. RigPages.Parts.Select(static part => part.Part)];

    [Theory]
    [MemberData(nameof(Parts))]
    public async Task A_phone_has_room_for_a_part(string part)
    {
        var page = (await VisitAsync(new() { ViewportSize = Phone, HasTouch = true, IsMobile = true, DeviceScaleFactor = 3 })).Page;
        var faults = new List<string>();
        foreach (var rig in (string[])[RigPages.Pit, RigPages.Festival])
        {
            await page.OpenPartAsync(Served.AddressOf(rig), part);
            await PartOpener.OpenAsync(page, part);
            faults.AddRange([.. await Layout.WideAsync(page), .. await Layout.SmallAsync(page), .. await Layout.LostAsync(page)]);
        }

        AssertNone(faults);
    }

    [Fact]
    public async Task A_phone_has_room_for_the_list_of_rigs()
    {
        var page = (await VisitAsync(new() { ViewportSize = Phone, HasTouch = true, IsMobile = true, DeviceScaleFactor = 3 })).Page;
        await page.OpenRigsAsync();
        AssertNone([.. await Layout.WideAsync(page), .. await Layout.SmallAsync(page), .. await Layout.LostAsync(page)]);
    }

    [Fact]
    public async Task A_phone_has_room_for_the_gear_library()
    {
        var page = (await VisitAsync(new() { ViewportSize = Phone, HasTouch = true, IsMobile = true, DeviceScaleFactor = 3 })).Page;
        var gear = await page.FillLibraryAsync();
        List<string> faults = [.. await Layout.WideAsync(page), .. await Layout.SmallAsync(page), .. await Layout.LostAsync(page)];
        await page.OpenGearAsync(gear);
        AssertNone([.. faults, .. await Layout.WideAsync(page), .. await Layout.SmallAsync(page), .. await Layout.LostAsync(page)]);
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public async Task Text_of_twice_the_size_loses_nothing(string part)
    {
        var page = (await VisitAsync()).Page;
        await page.OpenPartAsync(Served.AddressOf(RigPages.Pit), part);
        var before = await page.EvaluateAsync<double>("() => parseFloat(getComputedStyle(document.querySelector('.parts a')).fontSize)");
        await page.AddStyleTagAsync(new() { Content = "html { font-size: 200% !important; }" });
        Assert.Equal(2 * before, await page.EvaluateAsync<double>("() => parseFloat(getComputedStyle(document.querySelector('.parts a')).fontSize)"), 0.01);
        await PartOpener.OpenAsync(page, part);
        AssertNone([.. await Layout.WideAsync(page), .. await Layout.LostAsync(page)]);
    }

    private static void AssertNone(List<string> faults) => Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults.Distinct()));
}
