namespace Loadmark.Processes;

/// <summary>What the process tells its caller when it ends.</summary>
internal static class ExitCode
{
    /// <summary>Answered, and nothing of harm or fails was found.</summary>
    public const int Fine = 0;

    /// <summary>Answered: some rig has a finding of harm or fails.</summary>
    public const int Refused = 1;

    /// <summary>Some input, or the command line itself, cannot be read.</summary>
    public const int Unreadable = 2;

    /// <summary>A fault in the program, or an answer that could not be written.</summary>
    public const int Fault = 70;

    /// <summary>Interrupted by the user.</summary>
    public const int Interrupted = 130;
}
