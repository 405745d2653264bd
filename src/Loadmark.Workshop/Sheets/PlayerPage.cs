using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Fits;
using Loadmark.Core.LeadLists;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Paper;
using Loadmark.Drawing.Scenes;
using Loadmark.Simulation.Starting;

namespace Loadmark.Workshop.Sheets;

/// <summary>
/// One page in plain words for who plays the rig: what to switch on in which order, what not to swap, what to do when one thing goes quiet,
/// whom to ask.
/// </summary>
internal sealed class PlayerPage
{
    /// <summary>A page for a player has room for so many lines of a list; the feed schedule has the rest.</summary>
    private const int MostLines = 10;

    private readonly PageComposer _composer;
    private readonly SheetFigures _figures;

    private PlayerPage(PageComposer composer, SheetFigures figures) => (_composer, _figures) = (composer, figures);

    public static void Set(PageComposer composer, SheetFigures figures, SheetOptions options)
    {
        var page = new PlayerPage(composer, figures);
        page.SetSwitchOn();
        page.SetNotSwapped();
        page.SetGoneQuiet();
        page.SetContact(options.Contact);
    }

    private void SetSwitchOn()
    {
        _composer.Subheading("Switching on");
        // What is not known may be harm: that is found out before anybody switches on.
        if (_figures.Analysis.Check.Verdict >= Severity.Unsure)
        {
            Say("Do not switch this board on yet: something on it is not right. Ask first.", Ink.TextStrong);
            Say(VerdictSentence.Of(_figures.Analysis.Check));
            return;
        }

        var supplies = _figures.Rig.Supplies.Items.Where(supply => Feeds(supply) && SupplyInput.Of(supply) is null).ToList();
        List<string> steps =
        [
            "Turn the amplifier down, or leave it off.",
            .. supplies.Select(static supply => $"Plug {NameOf(supply)} into the wall."),
            StartUpText.AllComesUp(_figures.Started) && _figures.Started.SettledAfter is { } after
                ? $"Wait {Whole(after)}. By then everything on the board is up."
                : "Wait until every light is on. One of the pedals may need a second try: see the page Switch-on.",
            "Turn the amplifier on, then up.",
            "When you stop: amplifier down first, then pull the wall plugs.",
        ];
        for (var step = 0; step < steps.Count; step++)
            Say($"{step + 1}.  {steps[step]}");
    }

    /// <summary>What a lead would do to another load was judged as it is when it is plugged in.</summary>
    private void SetNotSwapped()
    {
        _composer.Subheading("Do not swap");
        var loads = _figures.Analysis.Wired.Loads.Items;
        var lines = new List<string>();
        var isAllKnown = true;
        foreach (var lead in _figures.Leads)
        {
            var fits = loads.Where(load => !lead.Feed.Loads.Contains(load))
                .Select(load => (Load: load, Fit: Suitability.Of(lead.Point, load.Rating).Harmless)).ToList();
            isAllKnown &= fits.All(static one => one.Fit != Fit.NotKnown);
            var harmed = fits.Where(static one => one.Fit == Fit.No).Select(static one => one.Load).ToList();
            if (harmed.Count == 0)
                continue;
            var others = harmed.Count == loads.Length - lead.Feed.Loads.Length ? "everything else here" : Phrases.List(Phrases.Ids(harmed));
            lines.Add(
                $"Lead {lead.Number}, from {lead.Feed.OutletNames} ({Volts(lead)}): only for {Phrases.List(Phrases.Ids(lead.Feed.Loads))}. "
                + $"It can damage {others}.");
        }

        if (!isAllKnown)
            Say(
                "Leave every lead where it is: not everything is known of what the leads give and what the pedals bear, "
                + "so a swap that is not named here may do damage too.",
                Ink.TextStrong);
        else if (lines.Count == 0)
            Say(
                "No lead of this board can damage another pedal of it. "
                + "Leave them as they are all the same: the supply has a place for each.");
        SetList(lines);
        Say("Never use another wall plug or supply for a pedal than this one, even if the plug fits. The plug does not show the volts.");
    }

    private void SetGoneQuiet()
    {
        _composer.Subheading("When one thing goes quiet");
        Say("1.  Is its light on? If it is, look first at the guitar leads before and behind it.");
        Say("2.  No light: push the small plug in at the pedal, then at the supply. Its lead has the same number at both ends.");
        Say("3.  Still no light: pull its plug at the supply, wait ten seconds, push it in again.");
        var shared = _figures.Leads.Items.Where(static lead => lead.Feed.Loads.Length > 1)
            .Select(static lead => $"Quiet together: {Phrases.List(Phrases.Ids(lead.Feed.Loads))}. They hang on lead {lead.Number} from "
                + $"{lead.Feed.OutletNames}: look there.").ToList();
        SetList(shared);
        var free = _figures.Analysis.Check.FreeOutlets.ToList();
        if (free.Count > 0)
            Say($"Free at the supply: {Phrases.List([.. free.Select(static outlet => $"{outlet.Outlet}")])}. Ask before you use one.");
    }

    private void SetContact(string? contact)
    {
        _composer.Subheading("Whom to ask");
        if (contact is { Length: > 0 })
        {
            Say(contact);
            return;
        }

        var box = new Box(_composer.Body.X, _composer.Next, _composer.Body.Width, 14 * PaperSize.PxPerMm);
        _composer.Place(new PaperPart { Tag = PaperTag.Artifact, Bounds = box, Shapes = [new RectShape(Ink.Hair, box, 2)] });
    }

    private void Say(string text, Ink ink = Ink.Text) => _composer.Paragraph(text, ink, TypeSize.Plain);

    private void SetList(List<string> lines)
    {
        foreach (var line in lines.Take(MostLines))
            Say($"•  {line}");
        if (lines.Count > MostLines)
            Say($"And {lines.Count - MostLines} more: see the feed schedule.");
    }

    private bool Feeds(Supply supply) =>
        _figures.Leads.Items.Any(lead => lead.Feed.Outlets.Any(outlet => outlet.Supply.Supply.Id == supply.Id));

    private static string NameOf(Supply supply) => supply.Name is { } name ? $"{supply.Id} ({name})" : supply.Id;

    private static string Volts(ListedLead lead) => $"{FigureDisplay.Printed(lead.Point.Volts)} {FormSigns.Of(lead.Point.Form)}";

    private static string Whole(Seconds time)
    {
        var seconds = Math.Max(1, (int)Math.Ceiling(time.Value));
        return seconds == 1 ? "a second" : $"{seconds} seconds";
    }
}
