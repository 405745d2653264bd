using Bunit;
using Bunit.TestDoubles;
using Loadmark.Web.Pages;
using Loadmark.Web.Parts;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor;

namespace Loadmark.Web.Tests.Parts;

/// <summary>The pages that hold the parts together.</summary>
public sealed class RigPageTests : PageTest
{
    [Fact]
    public async Task A_rig_is_opened_with_its_diagram_and_the_part_that_is_asked_for()
    {
        var view = await OpenAsync(SmallRig.Text);
        var page = Open(view.Session.Kept!.Id, "wire");
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindComponents<WirePanel>()));
        Assert.Single(page.FindComponents<RigDrawing>());
        Assert.Equal("Wire", page.Find("nav.parts [aria-current=page]").TextContent.Trim());
    }

    [Fact]
    public async Task An_edit_in_a_part_shows_in_the_diagram_and_undo_takes_it_back()
    {
        var view = await OpenAsync(SmallRig.Text);
        var page = Open(view.Session.Kept!.Id, "wire");
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindComponents<RigDrawing>()));
        await page.FindComponent<RigDrawing>().Instance.SetWidthAsync(900);
        Assert.DoesNotContain("sev-fails", page.Find("g.part-load[data-subject='delay-2']").ClassList);
        await page.InvokeAsync(() => page.Find("[aria-label='Unplug delay-2']").ClickAsync(new()));
        page.WaitForAssertion(() => Assert.Contains("sev-fails", page.Find("g.part-load[data-subject='delay-2']").ClassList));
        await page.Instance.KeyAsync("undo");
        page.WaitForAssertion(() => Assert.DoesNotContain("sev-fails", page.Find("g.part-load[data-subject='delay-2']").ClassList));
    }

    [Fact]
    public async Task A_load_clicked_in_the_diagram_is_plugged_into_the_picked_outlet_and_a_warning_is_told()
    {
        var view = await OpenAsync(SmallRig.Text);
        var page = Open(view.Session.Kept!.Id, "wire");
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindComponents<RigDrawing>()));
        await page.FindComponent<RigDrawing>().Instance.SetWidthAsync(900);
        await page.InvokeAsync(() => page.Find("g.can-pick[data-subject='brick/3']").ClickAsync(new()));
        await page.InvokeAsync(() => page.Find("g.part-load[data-subject='preamp-2']").ClickAsync(new()));
        Assert.Equal("plugging preamp-2 onto brick/3", (await Store.FindAsync(view.Session.Kept.Id, Stop))!.UndoWhat);
        var told = Assert.Single(Services.GetRequiredService<ISnackbar>().ShownSnackbars);
        Assert.Contains("Entered as it is plugged. preamp-2 gets 9 V from brick/3", told.Message, StringComparison.Ordinal);
        await page.InvokeAsync(() => page.Instance.KeyAsync("undo"));
        await page.InvokeAsync(() => page.Find("g.part-load[data-subject='drive-3']").ClickAsync(new()));
        Assert.Equal("plugging drive-3 onto brick/3", (await Store.FindAsync(view.Session.Kept.Id, Stop))!.UndoWhat);
        Assert.Single(Services.GetRequiredService<ISnackbar>().ShownSnackbars);
    }

    [Fact]
    public async Task A_rig_without_loads_begins_with_its_gear_at_its_own_address_and_stays_there_when_the_first_comes()
    {
        var view = await OpenAsync("rig: Empty\n");
        var id = view.Session.Kept!.Id;
        var page = Open(id, null);
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindComponents<GearPanel>()));
        Assert.Empty(((BunitNavigationManager)Services.GetRequiredService<NavigationManager>()).History);
        Assert.Equal("Gear", page.Find("nav.parts [aria-current=page]").TextContent.Trim());

        await page.InvokeAsync(() => page.FindComponent<GearPanel>().Instance.View.Session.EditTextAsync("adding", SmallRig.Text));
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindComponents<RigDrawing>()));
        Assert.NotEmpty(page.FindComponents<GearPanel>());

        // The findings are elsewhere then, and can be gone to.
        Assert.Equal($"rig/{id}/findings", page.Find("nav.parts a").GetAttribute("href"));
        page.Render(parameters => parameters.Add(one => one.Id, id).Add(one => one.Part, "findings"));
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindComponents<FindingsPanel>()));
    }

    [Fact]
    public async Task A_rig_with_loads_begins_with_its_findings_and_their_number_is_a_word_of_its_own()
    {
        var view = await OpenAsync(SmallRig.Text);
        var page = Open(view.Session.Kept!.Id, null);
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindComponents<FindingsPanel>()));
        var link = page.Find("nav.parts [aria-current=page]");
        Assert.Equal($"rig/{view.Session.Kept.Id}", link.GetAttribute("href"));
        Assert.Equal(["Findings", $"{view.Check.Findings.Count}"], link.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public void A_rig_that_is_not_there_says_so()
    {
        var page = Open(Guid.NewGuid(), null);
        page.WaitForAssertion(() => Assert.Contains("This rig is not here", page.Markup, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_rig_that_cannot_be_read_opens_as_text_with_its_faults()
    {
        var view = await OpenAsync("rig: a\nload: {}\n");
        var page = Open(view.Session.Kept!.Id, null);
        page.WaitForAssertion(() => Assert.Contains("Line 2, column 1", page.Find(".faults").TextContent, StringComparison.Ordinal));
        page.Find("#file-text").Change("rig: a\nloads: {}\n");
        await page.InvokeAsync(() => page.Find("form").SubmitAsync());
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("nav.parts")));
    }

    [Fact]
    public async Task Rigs_are_listed_begun_taken_in_removed_and_brought_back()
    {
        await OpenAsync(PageExamples.Read("left-at-18"));
        var page = Render<RigsPage>();
        page.WaitForAssertion(() => Assert.Equal("Harm", page.Find(".riglist .sev").TextContent.Trim()));

        await page.InvokeAsync(() => page.FindAll("button").First(button => button.TextContent == "Remove").ClickAsync(new()));
        page.WaitForAssertion(() => Assert.Contains("is removed.", page.Markup, StringComparison.Ordinal));
        Assert.Empty(await Store.ListAsync(Stop));
        await page.InvokeAsync(() => page.FindAll("button").First(button => button.TextContent == "Bring it back").ClickAsync(new()));
        Assert.Single(await Store.ListAsync(Stop));

        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("rig: [", "broken.yaml"));
        page.WaitForAssertion(() => Assert.Contains("broken.yaml is not a rig file that can be read", page.Markup, StringComparison.Ordinal));
        Assert.Single(await Store.ListAsync(Stop));
        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(SmallRig.Text, "pier.yaml"));
        page.WaitForAssertion(() => Assert.Matches("/rig/[0-9a-f-]{36}$", Services.GetRequiredService<NavigationManager>().Uri));
        Assert.Contains(await Store.ListAsync(Stop), rig => rig.Name == "Pier Theatre");
    }

    private IRenderedComponent<RigPage> Open(Guid id, string? part) => Render<RigPage>(page => page.Add(one => one.Id, id).Add(one => one.Part, part));
}
