using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>How the program begins and ends, and what is there again when it begins anew.</summary>
public sealed class LifeTests(SharedBrowser browser) : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-browser-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("INT")]
    [InlineData("TERM")]
    public async Task A_signal_ends_it_well(string signal)
    {
        await using var program = await RunningProgram.StartAsync(_folder);
        Assert.Equal(200, (await RawAnswer.AskAsync(program, "GET", "/")).Status);
        Assert.Equal(0, await program.EndAsync(signal));
        Assert.Empty(program.Errors);
    }

    [Theory]
    [InlineData("INT")]
    [InlineData("TERM")]
    public async Task A_signal_ends_it_well_with_a_page_open_and_the_rig_is_there_tomorrow(string signal)
    {
        await using (var program = await RunningProgram.StartAsync(_folder))
        {
            await using var visit = await Visit.OpenAsync(browser.Browser, program);
            await visit.Page.ImportAsync("own.rig.yaml", "rig: Kept overnight\nloads:\n  drive-3: { label: 9V 12mA }\n"u8.ToArray());
            await visit.Page.WaitForPartAsync("");
            visit.AssertQuiet();
            Assert.Equal(0, await program.EndAsync(signal));
            Assert.Empty(program.Errors);
        }

        await using (var program = await RunningProgram.StartAsync(_folder))
        {
            await using var visit = await Visit.OpenAsync(browser.Browser, program);
            await visit.Page.OpenRigsAsync();
            await Expect(visit.Page.GetByRole(AriaRole.Link, new() { Name = "Kept overnight", Exact = true })).ToBeVisibleAsync();
            visit.AssertQuiet();
        }
    }
}
