namespace Loadmark.CommandLines;

/// <summary>
/// A command in the list of those that can be typed. What it takes is told only when somebody asks: of all commands one is run, and to tell
/// of the others what nobody asks made a command that answers at once a twentieth slower.
/// </summary>
/// <param name="name">The command's name as it is typed.</param>
/// <param name="tell">Tells what the command is for, takes and does.</param>
internal sealed class CommandEntry(string name, Func<CommandSpec> tell)
{
    /// <summary>The command's name as it is typed.</summary>
    public string Name => name;

    /// <summary>What the command is for, takes and does.</summary>
    public CommandSpec Spec => field ??= tell();
}
