using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.Entities;

/// <summary>The tables, free of what is particular to one database.</summary>
internal sealed class StorageContext(DbContextOptions<StorageContext> options) : DbContext(options)
{
    public DbSet<RigRow> Rigs => Set<RigRow>();

    public DbSet<EditRow> Edits => Set<EditRow>();

    public DbSet<GearRow> Gear => Set<GearRow>();

    public DbSet<GearChangeRow> GearChanges => Set<GearChangeRow>();

    public DbSet<GearReadingRow> GearReadings => Set<GearReadingRow>();

    public DbSet<GearUseRow> GearUses => Set<GearUseRow>();

    public DbSet<GearDecisionRow> GearDecisions => Set<GearDecisionRow>();

    public DbSet<AcceptanceRow> Acceptances => Set<AcceptanceRow>();

    public DbSet<CountRow> Counts => Set<CountRow>();

    public DbSet<TotalRow> Totals => Set<TotalRow>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<RigRow>(rig =>
        {
            rig.ToTable("Rigs");
            rig.HasKey(row => row.Id);
            rig.Property(row => row.Id).ValueGeneratedNever().HasColumnOrder(0);
            rig.Property(row => row.Name).HasColumnOrder(1);
            rig.Property(row => row.Revision).HasColumnOrder(2);
            rig.Property(row => row.Present).HasColumnOrder(3);
            rig.Property(row => row.Changed).HasColumnOrder(4);
            rig.Property(row => row.Removed).HasColumnOrder(5);
            rig.Property(row => row.Text).HasColumnOrder(6);
            rig.Property(row => row.UsesRevision).HasColumnOrder(7).HasDefaultValue(0L);
            rig.Property(row => row.Seal).HasColumnOrder(8);
            rig.HasIndex(row => row.Changed);

            // Tells the rigs whose uses of gear are behind without a look at the rows, which would read through their texts.
            rig.HasIndex(row => new { row.Removed, row.UsesRevision, row.Revision });
        });

        modelBuilder.Entity<EditRow>(edit =>
        {
            edit.ToTable("Edits");
            edit.HasKey(row => new { row.RigId, row.Number });
            edit.Property(row => row.Number).ValueGeneratedNever();
            edit.HasOne<RigRow>().WithMany().HasForeignKey(row => row.RigId).OnDelete(DeleteBehavior.Cascade);
        });

        modelBuilder.Entity<GearRow>(gear =>
        {
            gear.ToTable("Gear");
            gear.HasKey(row => row.Id);
            gear.Property(row => row.Id).ValueGeneratedNever();
            gear.HasIndex(row => new { row.Kind, row.TagKey }).IsUnique();
            gear.HasIndex(row => row.Stamp);
        });

        modelBuilder.Entity<GearChangeRow>(change =>
        {
            change.ToTable("GearChanges");
            change.HasKey(row => new { row.GearId, row.Number });
            change.Property(row => row.Number).ValueGeneratedNever();
            change.HasOne<GearRow>().WithMany().HasForeignKey(row => row.GearId).OnDelete(DeleteBehavior.Cascade);
        });

        modelBuilder.Entity<GearReadingRow>(reading =>
        {
            reading.ToTable("GearReadings");
            reading.HasKey(row => row.Id);
            reading.Property(row => row.Id).ValueGeneratedNever();
            reading.Property(row => row.Current).HasPrecision(28, 12);
            reading.Property(row => row.Duration).HasPrecision(28, 12);
            reading.Property(row => row.MeterShare).HasPrecision(28, 12);
            reading.Property(row => row.MeterPlus).HasPrecision(28, 12);
            reading.HasOne<GearRow>().WithMany().HasForeignKey(row => row.GearId).OnDelete(DeleteBehavior.Cascade);
        });

        modelBuilder.Entity<GearUseRow>(use =>
        {
            use.ToTable("GearUses");
            use.HasKey(row => new { row.RigId, row.Kind, row.TagKey });
            use.HasIndex(row => new { row.Kind, row.TagKey });
            use.HasOne<RigRow>().WithMany().HasForeignKey(row => row.RigId).OnDelete(DeleteBehavior.Cascade);
        });

        modelBuilder.Entity<GearDecisionRow>(decision =>
        {
            decision.ToTable("GearDecisions");
            decision.HasKey(row => new { row.GearId, row.RigId });
            decision.HasOne<RigRow>().WithMany().HasForeignKey(row => row.RigId).OnDelete(DeleteBehavior.Cascade);
            decision.HasOne<GearRow>().WithMany().HasForeignKey(row => row.GearId).OnDelete(DeleteBehavior.Cascade);
        });

        modelBuilder.Entity<AcceptanceRow>(acceptance =>
        {
            acceptance.ToTable("Acceptances");
            acceptance.HasKey(row => row.Id);
            acceptance.Property(row => row.Id).ValueGeneratedNever();
            acceptance.HasIndex(row => row.RigId);
            acceptance.HasOne<RigRow>().WithMany().HasForeignKey(row => row.RigId).OnDelete(DeleteBehavior.Cascade);
        });

        modelBuilder.Entity<CountRow>(count =>
        {
            count.ToTable("Counts");
            count.HasKey(row => row.Name);
        });

        modelBuilder.Entity<TotalRow>(total =>
        {
            total.ToTable("Totals");
            total.HasKey(row => row.Table);
        });
    }
}
