using Loadmark.Core.Acceptance;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Files.Readings;
using Loadmark.Storage.Acceptances;

namespace Loadmark.Workshop.Accepting;

/// <summary>A kept record, read: the rig that was measured and what was measured on it.</summary>
/// <param name="Stored">The record as it is kept.</param>
/// <param name="Rig">The rig that was measured; null where its text cannot be read any more.</param>
/// <param name="Session">What was measured; null where it cannot be read any more.</param>
public sealed record AcceptanceRecord(StoredAcceptance Stored, Rig? Rig, BenchSession? Session)
{
    /// <summary>What is kept of a session.</summary>
    /// <param name="plan">What was to be measured.</param>
    /// <param name="session">What was measured.</param>
    public static AcceptanceContent ContentOf(AcceptancePlan plan, BenchSession session)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(session);
        var named = session with { RigVersion = plan.Version };
        return new AcceptanceContent(
            plan.Version,
            RigFileWriter.Write(plan.Rig.WithoutLibrary()),
            ReadingsWriter.Write(named, plan.Points.Items.Select(static point => point.Plug)),
            MeasureText.Of(AcceptanceJudge.Judge(plan, named).Verdict));
    }

    /// <summary>Reads a record.</summary>
    /// <param name="stored">The record as it is kept.</param>
    public static AcceptanceRecord Of(StoredAcceptance stored)
    {
        ArgumentNullException.ThrowIfNull(stored);
        var rig = RigFileReader.Read(stored.Content.RigText, "").Rig;
        var session = rig is null ? null : ReadingsReader.Read(stored.Content.Readings, "", RigPlugs.Of(rig)).Session;
        return new AcceptanceRecord(stored, rig, session);
    }
}
