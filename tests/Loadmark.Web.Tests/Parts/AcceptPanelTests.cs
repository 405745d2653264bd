using Bunit;
using Loadmark.Core.Gear;
using Loadmark.Meters.Simulated;
using Loadmark.Storage.Gear;
using Loadmark.Web.Parts;
using Loadmark.Web.Views;

namespace Loadmark.Web.Tests.Parts;

/// <summary>Measuring a finished rig with one hand at the bench.</summary>
public sealed class AcceptPanelTests : PageTest
{
    private const string Rig = """
        rig: two
        mains: 230 V 50 Hz
        loads:
          drive-3: { kind: analog drive, label: "9V DC 12mA centre negative 5.5x2.1" }
          delay-2: { kind: digital, label: "9V DC 300mA centre negative 5.5x2.1", run: 210 mA }
        supplies:
          brick:
            label: "INPUT 100-240V~ 50/60Hz"
            isolated: true
            outlets:
              1-2: { label: 9 V DC 500 mA, polarity: centre negative, plug: 5.5x2.1 }
        wired:
          - { from: brick/1, to: drive-3 }
          - { from: brick/2, to: delay-2 }
        """;

    [Fact]
    public async Task From_the_first_probe_to_the_signed_record()
    {
        var view = await OpenAsync(Rig);
        var part = Shown(view);
        Assert.Equal("Lead 1, plug of drive-3", part.Find("#measure-title").TextContent);
        Assert.True(SignButton(part) is null);
        await TellAsync(part, "#accept-by", "R. Ellery");
        await TellAsync(part, "#accept-volts", "0.5 % + 2 digits");
        await TellAsync(part, "#accept-amps", "1 % + 3 digits");
        await TakeAsync(part, "9.04", "−");
        Assert.Equal("Lead 2, plug of delay-2", part.Find("#measure-title").TextContent);
        Assert.Contains("May be plugged in: drive-3.", part.Markup, StringComparison.Ordinal);
        await TakeAsync(part, "-9.05", "+");
        Assert.Contains("Not taken: the sign in the field is not that of the button.", part.Find("#measure-about").TextContent, StringComparison.Ordinal);
        Assert.Equal("Lead 2, plug of delay-2", part.Find("#measure-title").TextContent);
        await TakeAsync(part, "-9.05", "−");
        await TakeAsync(part, "9.03", "−");
        await TakeAsync(part, "8.97", "−");
        Assert.Contains("accepted", part.Find(".verdictline").TextContent, StringComparison.Ordinal);

        // What is left is a draw, which is taken without a sign.
        Assert.Contains("3 mA", await DrawAsync(part, "11.3 mA"), StringComparison.Ordinal);
        await part.InvokeAsync(() => SignButton(part)!.ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Contains("signed.", part.Find(".records").TextContent, StringComparison.Ordinal));
        Assert.Empty(part.FindAll("#measure-read"));

        var record = Assert.Single(await Whole.Acceptances.ListAsync(view.Session.Kept!.Id, Stop));
        Assert.NotNull(record.Signed);
        Assert.Equal("accepted", record.Content.Verdict);
        Assert.Contains("by: R. Ellery", record.Content.Readings, StringComparison.Ordinal);
        Assert.Contains("-9.05 V", record.Content.Readings, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_fails_stays_in_sight_with_what_to_do()
    {
        var part = Shown(await OpenAsync(Rig));
        await TakeAsync(part, "nine", "−");
        Assert.Contains("Not taken", part.Find("#measure-about").TextContent, StringComparison.Ordinal);
        await TellAsync(part, "#accept-volts", "0.5 % + 2 digits");
        await TakeAsync(part, "9.05", "+");
        Assert.Equal("Lead 1, plug of drive-3", part.Find("#measure-title").TextContent);
        Assert.Contains("Reversed", part.Find("#measure-about").TextContent, StringComparison.Ordinal);
        Assert.Contains("Do not plug drive-3 in.", part.Find("#measure-about").TextContent, StringComparison.Ordinal);
        Assert.Contains("refused", part.Find(".verdictline").TextContent, StringComparison.Ordinal);
        Assert.Contains("Nothing may be plugged in yet.", part.Markup, StringComparison.Ordinal);
        await TellAsync(part, "#accept-volts", "good");
        Assert.Contains("expected", part.Find("#accept-volts-about").TextContent, StringComparison.Ordinal);
    }

    /// <summary>Another window, tomorrow: the readings are there, and after an edit it says which still hold.</summary>
    [Fact]
    public async Task What_was_measured_is_there_again_and_an_edit_marks_it_stale()
    {
        var view = await OpenAsync(Rig);
        var part = Shown(view);
        await TellAsync(part, "#accept-volts", "0.5 % + 2 digits");
        await TakeAsync(part, "9.04", "−");
        await TakeAsync(part, "9.04", "−");
        var again = await ReopenAsync(view.Session.Kept!.Id);
        part = Shown(again);
        Assert.Equal("Lead 1, plug of drive-3", part.Find("#measure-title").TextContent);
        Assert.Contains("−9.04 V", part.Find(".measures").TextContent, StringComparison.Ordinal);

        await part.InvokeAsync(() => again.Session.EditTextAsync("typing", Rig.Replace("delay-2: {", "delay-2: { plug: 5.5x2.5,", StringComparison.Ordinal).Replace("from: brick/2", "from: brick/1", StringComparison.Ordinal)));
        part.WaitForAssertion(() => Assert.Contains("1 readings still hold", part.Markup, StringComparison.Ordinal));
        Assert.Contains("To be measured again: delay-2 at brick/2 plug 1, open.", part.Markup, StringComparison.Ordinal);
        Assert.Empty(part.FindAll("#measure-read"));
        await part.InvokeAsync(() => Button(part, "Go on with what still holds").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.NotEmpty(part.FindAll("#measure-read")));
    }

    [Fact]
    public async Task Draws_go_into_the_library_once()
    {
        var gear = (await Whole.Gear.AddAsync(new GearContent { Kind = GearKind.Load, Tag = "delay-2", Label = "9V DC 300mA", Text = "delay-2: 9V DC 300mA" }, "typed", Stop)).Gear!;
        var view = await OpenAsync(Rig);
        var part = Shown(view);
        await TellAsync(part, "#accept-by", "R. Ellery");
        await TellAsync(part, "#accept-amps", "1 % + 3 digits");
        foreach (var one in part.FindAll(".measures .goto").Where(static one => one.TextContent.Contains("delay-2", StringComparison.Ordinal)).TakeLast(1))
            await part.InvokeAsync(() => one.ClickAsync(new()));
        await DrawAsync(part, "208 mA");
        await part.InvokeAsync(() => SignButton(part)!.ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Contains("Put it into the library", part.Markup, StringComparison.Ordinal));
        await part.InvokeAsync(() => Button(part, "Put it into the library").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Contains("in the library", part.Markup, StringComparison.Ordinal));
        var reading = Assert.Single(await Whole.Gear.Readings.ListAsync(gear.Id, Stop)).Reading;
        Assert.Equal((new Amps(0.208m), "1 % + 3 mA"), (reading.Current, reading.Meter.ToString()));
        Assert.StartsWith("measured on two, version ", reading.Note, StringComparison.Ordinal);
    }

    /// <summary>A meter that speaks puts its reading into the field, with its sign, and only where it measures the same.</summary>
    [Fact]
    public async Task A_meter_reads_into_the_field()
    {
        await using var simulated = new SimulatedInstrument(new SimulatedMeter([-9.0437], [0.2101]));
        var part = Shown(await OpenAsync(Rig));
        await TellAsync(part, "#accept-volts", "0.5 % + 2 digits");
        await part.InvokeAsync(() => part.Find("#meter-address").InputAsync(new() { Value = $"127.0.0.1:{simulated.Port}" }));
        await part.InvokeAsync(() => part.Find("#meter-address").Closest("form")!.SubmitAsync(EventArgs.Empty));
        part.WaitForAssertion(() => Assert.Contains("Read volts", part.Markup, StringComparison.Ordinal));
        await part.InvokeAsync(() => Button(part, "Read volts").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Equal("-9.04 V", part.Find("#measure-read").GetAttribute("value")));

        // An accuracy without digits has all that was sent.
        await TellAsync(part, "#accept-volts", "0.05 % + 1 mV");
        await part.InvokeAsync(() => Button(part, "Read volts").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Equal("-9.0437 V", part.Find("#measure-read").GetAttribute("value")));
        await part.InvokeAsync(() => part.Find("form.reading").SubmitAsync(EventArgs.Empty));
        part.WaitForAssertion(() => Assert.Equal("Lead 2, plug of delay-2", part.Find("#measure-title").TextContent));
        Assert.Contains("pass", part.Find(".measures").TextContent, StringComparison.Ordinal);

        await part.InvokeAsync(() => Button(part, "Read amps").ClickAsync(new()));
        await part.InvokeAsync(() => Button(part, "It is set up for amps: read").ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Contains("volts are measured here", part.Find("#measure-about").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_rig_without_wiring_has_nothing_to_measure() =>
        Assert.Contains("Nothing is wired yet", Wait(Show<AcceptPanel>(await OpenAsync("rig: r\nloads: { a: 9V 20mA }\n")), "Nothing").Markup, StringComparison.Ordinal);

    private IRenderedComponent<PartHost> Shown(RigView view) => Wait(Show<AcceptPanel>(view), "measure-title");

    private static IRenderedComponent<PartHost> Wait(IRenderedComponent<PartHost> part, string text)
    {
        part.WaitForAssertion(() => Assert.Contains(text, part.Markup, StringComparison.Ordinal));
        return part;
    }

    private static AngleSharp.Dom.IElement? SignButton(IRenderedComponent<PartHost> part) =>
        part.FindAll("button").FirstOrDefault(static button => button.TextContent.Trim() == "Sign this record");

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<PartHost> part, string text) =>
        part.FindAll("button").First(button => button.TextContent.Trim() == text);

    private static async Task TellAsync(IRenderedComponent<PartHost> part, string field, string typed)
    {
        await part.InvokeAsync(() => part.Find(field).ChangeAsync(new() { Value = typed }));
        part.WaitForAssertion(() => Assert.Empty(part.FindAll("button.big[disabled]")));
    }

    private static async Task TakeAsync(IRenderedComponent<PartHost> part, string typed, string sign)
    {
        await part.InvokeAsync(() => part.Find("#measure-read").InputAsync(new() { Value = typed }));
        await part.InvokeAsync(() => part.FindAll("button.big").First(button => button.TextContent.StartsWith(sign, StringComparison.Ordinal)).ClickAsync(new()));
        part.WaitForAssertion(() => Assert.Empty(part.FindAll("button.big[disabled]")));
    }

    private static async Task<string> DrawAsync(IRenderedComponent<PartHost> part, string typed)
    {
        await part.InvokeAsync(() => part.Find("#measure-read").InputAsync(new() { Value = typed }));
        await part.InvokeAsync(() => part.Find("form.reading").SubmitAsync(EventArgs.Empty));
        part.WaitForAssertion(() => Assert.Empty(part.FindAll("button.big[disabled]")));
        return part.Find("#measure-about").TextContent;
    }
}
