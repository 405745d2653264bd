using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>When the program behind a page is closed, the page says so in words of its own, and goes on when the program is there again.</summary>
public sealed class ClosedProgramTests(SharedBrowser browser) : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-browser-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task The_page_says_that_the_program_was_closed_and_goes_on_with_what_was_typed_when_it_is_there_again()
    {
        int port;
        Visit visit;
        await using (var program = await RunningProgram.StartAsync(_folder))
        {
            port = program.Address.Port;
            visit = await Visit.OpenAsync(browser.Browser, program);
            await visit.Page.ImportAsync("own.rig.yaml", "rig: Kept\nloads:\n  drive-3: { label: 9V 12mA }\n"u8.ToArray());
            await visit.Page.GetByRole(AriaRole.Navigation, new() { Name = "What to do" }).GetByRole(AriaRole.Link, new() { Name = "Gear" }).ClickAsync();
            await visit.Page.WaitForPartAsync("gear");
            await visit.Page.GetByLabel("Add loads: one label a line").FillAsync("delay-2: 9V DC 300mA");
            await Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Add 1 load" })).ToBeVisibleAsync();
            Assert.Equal(0, await program.EndAsync("TERM"));
        }

        await using (visit)
        {
            var said = visit.Page.GetByRole(AriaRole.Alert).Filter(new() { HasText = "Loadmark was closed. Your rigs are safe." });
            await Expect(said).ToBeVisibleAsync();
            await using var again = await RunningProgram.StartAsync(_folder, port);
            Assert.Equal(port, again.Address.Port);

            // A program that opens no browser by itself waits for somebody to open its address: with the key, in any tab of this browser.
            await Expect(visit.Page.GetByText("Open the address that it printed; this page then goes on where it was.")).ToBeVisibleAsync();
            Assert.True((await visit.Context.APIRequest.GetAsync(again.Entrance.ToString())).Ok);
            await Expect(said).ToBeHiddenAsync();
            await Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Add 1 load" })).ToBeVisibleAsync();
            await Expect(visit.Page.GetByLabel("Add loads: one label a line")).ToHaveValueAsync("delay-2: 9V DC 300mA");
        }
    }
}
