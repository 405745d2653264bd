namespace Loadmark.Storage.Tests.Model;

internal enum StepKind
{
    Save,
    SaveTheSame,
    Undo,
    Redo,
    Remove,
    Restore,
    Stale,
    Reopen,
}

/// <summary>One thing that a user does to a rig.</summary>
internal sealed record Step(StepKind Kind, string Name, string Text, string What);
