using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;
using Loadmark.Drawing.Diagrams;
using Loadmark.Workshop.Sessions;

namespace Loadmark.Web.Views;

/// <summary>What the parts of one rig's page share: the rig of the session, what is lit, what is picked, what is shown on trial.</summary>
/// <param name="session">The session.</param>
public sealed class RigView(RigSession session)
{
    /// <summary>The rig that what is shown follows from.</summary>
    private Rig? _followed = session.Rig;

    /// <summary>Raised after anything but the rig itself has changed.</summary>
    public event EventHandler? Changed;

    /// <summary>The session that edits the rig.</summary>
    public RigSession Session => session;

    /// <summary>The rig of the session.</summary>
    /// <exception cref="InvalidOperationException">Its text cannot be read.</exception>
    public Rig Rig => session.Rig ?? throw new InvalidOperationException("There is no readable rig in the session.");

    /// <summary>What the rules say of the rig of the session.</summary>
    /// <exception cref="InvalidOperationException">Its text cannot be read.</exception>
    public CheckResult Check => session.Check ?? throw new InvalidOperationException("There is no readable rig in the session.");

    /// <summary>The ids that are lit in the diagram.</summary>
    public IReadOnlySet<string> Lit { get; private set; } = new HashSet<string>();

    /// <summary>The outlet that loads are about to be plugged into; null when none is picked.</summary>
    public OutletRef? Picked { get; private set; }

    /// <summary>What becomes of each load on the picked outlet, in the order of the rig; empty when none is picked.</summary>
    public IReadOnlyList<Connection> Connections { get; private set; } = [];

    /// <summary>What supplies are to be bought for; null where no plan has said.</summary>
    public Shortage? Shortage { get; set; }

    /// <summary>
    /// Whether the nameplates speak for a yes that the circuit has not confirmed yet: it is not said until then.
    /// </summary>
    public bool IsYesPending => Preview is null && session is { IsExamining: true, Check.Verdict: Severity.Good or Severity.Note };

    /// <summary>A rig that is shown on trial; null when the diagram shows the rig of the session.</summary>
    public RigPreview? Preview { get; private set; }

    /// <summary>Volts and amps that the diagram shows; null for none.</summary>
    public DiagramValues? Readings { get; private set; }

    /// <summary>What <see cref="Readings"/> are of, in a few words.</summary>
    public string ReadingsOf { get; private set; } = "";

    /// <summary>Lights things in the diagram.</summary>
    /// <param name="ids">Their ids, as findings name them; none to light nothing.</param>
    public void Light(params IEnumerable<string> ids)
    {
        var lit = ids.ToHashSet(StringComparer.Ordinal);
        if (lit.SetEquals(Lit))
            return;
        Lit = lit;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>The ids that are to be in sight in the diagram; none to see again what was in sight before.</summary>
    public IReadOnlyList<string> InSight { get; private set; } = [];

    /// <summary>Brings things into sight in the diagram.</summary>
    /// <param name="ids">Their ids, as findings name them; none to go back to where the diagram was.</param>
    public void BringIntoSight(params IEnumerable<string> ids)
    {
        InSight = [.. ids];
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Picks an outlet to plug loads into, or lets go of it.</summary>
    /// <param name="outlet">The outlet; null, or the one that is picked, to let go.</param>
    public void Pick(OutletRef? outlet)
    {
        Picked = outlet == Picked ? null : outlet;
        Refresh();
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>
    /// Plugs a load into the picked outlet in the best way there is, or unplugs it where it is there already. What would be harmed is
    /// entered all the same: it may be plugged like this.
    /// </summary>
    /// <param name="load">The load's tag.</param>
    /// <returns>What stands against it, to be told; null when nothing does.</returns>
    public async Task<Finding?> PlugAsync(string load)
    {
        if (Connections.FirstOrDefault(connection => connection.Load == load) is not { } connection)
            return null;
        if (connection.IsThere)
            await session.EditAsync($"unplugging {load}", Rig.Unplug(load));
        else
            await session.EditAsync($"plugging {connection.Best.What}", connection.Best.Rig);
        return connection.Objection;
    }

    /// <summary>Shows a rig on trial.</summary>
    /// <param name="preview">The rig; null to show that of the session again.</param>
    public void Show(RigPreview? preview)
    {
        Preview = preview;
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Takes the rig on trial.</summary>
    public async Task TakeAsync()
    {
        if (Preview is not { } preview)
            return;
        Preview = null;
        await session.EditAsync(preview.What, preview.Rig);
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Shows volts and amps in the diagram.</summary>
    /// <param name="readings">Them; null for none.</param>
    /// <param name="of">What they are of, in a few words.</param>
    public void Show(DiagramValues? readings, string of = "")
    {
        (Readings, ReadingsOf) = (readings, of);
        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Brings what follows from the rig up to date after it has changed.</summary>
    public void Follow()
    {
        // A session has more to tell than edits: that one is kept, or what the circuit says of it.
        if (ReferenceEquals(_followed, session.Rig))
            return;
        (_followed, Preview, Readings) = (session.Rig, null, null);
        Refresh();
    }

    private void Refresh()
    {
        if (Picked is { } outlet && session.Rig is { } rig
            && rig.Supplies.Items.Any(supply => supply.Id == outlet.Supply && supply.Outlets.Items.Any(one => one.Id == outlet.Outlet)))
        {
            // By the nameplates alone: with the circuit solved for every way there is, forty loads would take seconds.
            Connections = new ConnectionTrials(rig, NameplateCheck.Of(rig), NameplateCheck.Of).On(outlet);
        }
        else
        {
            (Picked, Connections) = (null, []);
        }
    }
}
